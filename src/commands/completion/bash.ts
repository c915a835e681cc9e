import type { CompletedWords, Offered } from './words.ts'

/** Words of the program alone: nothing in them is special to a shell. */
export function bashCompletion(commands: readonly CompletedWords[]): string {
  return `# bash completion of fettle: eval "$(fettle completion bash)"
_fettle() {
  local word=\${COMP_WORDS[COMP_CWORD]} before=\${COMP_WORDS[COMP_CWORD-1]} command='' i
  for ((i = 1; i < COMP_CWORD; i++)); do
    case \${COMP_WORDS[i]} in
      -*) ;;
      *) command=\${COMP_WORDS[i]}; break ;;
    esac
  done
  COMPREPLY=()
  case $command in
    '')
      COMPREPLY=($(compgen -W '${[...commands.map(({ name }) => name), '--help', '--version'].join(' ')}' -- "$word"))
      return ;;
${commands.map(commandCase).join('\n')}
  esac
}
complete -o default -F _fettle fettle
`
}

function commandCase({ name, options, argument }: CompletedWords): string {
  const taking = options.flatMap(({ word, takes }) => (takes === null ? [] : [`        ${word}) ${offer(takes)}; return ;;`]))
  return `    ${name})
      case $before in
${[...taking, '        *) ;;'].join('\n')}
      esac
      if [[ $word == -* ]]; then
        COMPREPLY=($(compgen -W '${options.map(({ word }) => word).join(' ')}' -- "$word"))
      else
        ${offer(argument)}
      fi ;;`
}

/** With nothing to offer, bash offers files by itself: that is told off where text is wanted. */
function offer(takes: Offered['takes']): string {
  if (takes === 'file') return 'COMPREPLY=()'
  if (takes === 'text' || takes === null) return 'compopt +o default'
  return `COMPREPLY=($(compgen -W '${takes.join(' ')}' -- "$word"))`
}

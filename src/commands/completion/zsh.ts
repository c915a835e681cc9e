import type { CompletedWords, Offered } from './words.ts'

export function zshCompletion(commands: readonly CompletedWords[]): string {
  return `#compdef fettle
# zsh completion of fettle: put it as _fettle into a folder of $fpath
_fettle() {
  local context state state_descr line
  typeset -A opt_args
  _arguments -C '--help[print this help]' '--version[print the version]' '1: :->command' '*:: :->words'
  case $state in
    command)
      local -a commands
      commands=(
${commands.map(({ name, says }) => `        ${quoted(`${name}:${says.replaceAll(':', '\\:')}`)}`).join('\n')}
      )
      _describe command commands ;;
    words)
      case $words[1] in
${commands.map(commandCase).join('\n')}
      esac ;;
  esac
}
compdef _fettle fettle
`
}

function commandCase({ name, options, argument }: CompletedWords): string {
  const lines = [...options.map(optionText), ...(argument === null ? [] : [quoted(`*: :${action(argument)}`)])]
  return `        ${name})
          _arguments \\
${lines.map(line => `            ${line}`).join(' \\\n')} ;;`
}

function optionText({ word, says, takes }: Offered): string {
  const text = says.replace(/[[\]\\:]/g, sign => `\\${sign}`)
  return quoted(`${word}[${text}]${takes === null ? '' : `: :${action(takes)}`}`)
}

function action(takes: NonNullable<Offered['takes']>): string {
  if (takes === 'file') return '_files'
  return takes === 'text' ? ' ' : `(${takes.join(' ')})`
}

function quoted(text: string): string {
  return `'${text.replaceAll("'", "'\\''")}'`
}

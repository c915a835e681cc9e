import type { CompletedWords, Offered } from './words.ts'

export function fishCompletion(commands: readonly CompletedWords[]): string {
  const lines = commands.flatMap(commandLines)
  return `# fish completion of fettle: fettle completion fish > ~/.config/fish/completions/fettle.fish
complete -c fettle -f
complete -c fettle -n __fish_use_subcommand -l help -d 'print this help'
complete -c fettle -n __fish_use_subcommand -l version -d 'print the version'
${lines.join('\n')}
`
}

function commandLines({ name, says, options, argument }: CompletedWords): readonly string[] {
  const inside = `complete -c fettle -n '__fish_seen_subcommand_from ${name}'`
  return [
    `complete -c fettle -n __fish_use_subcommand -a ${name} -d ${quoted(says)}`,
    ...(argument === null || argument === 'text' ? [] : [`${inside} ${argument === 'file' ? '-F' : `-a ${quoted(argument.join(' '))}`}`]),
    ...options.map(option => `${inside} ${optionText(option)}`)
  ]
}

function optionText({ word, says, takes }: Offered): string {
  const name = word.startsWith('--') ? `-l ${word.slice(2)}` : `-s ${word.slice(1)}`
  return `${name}${following(takes)} -d ${quoted(says)}`
}

function following(takes: Offered['takes']): string {
  if (takes === null) return ''
  if (takes === 'file') return ' -r -F'
  return takes === 'text' ? ' -x' : ` -x -a ${quoted(takes.join(' '))}`
}

function quoted(text: string): string {
  return `'${text.replace(/[\\']/g, sign => `\\${sign}`)}'`
}

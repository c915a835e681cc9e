const PLAIN = /^[A-Za-z0-9%/^·"']*$/

/** Signs that Unicode would fold to something else, or not at all. */
const SIGNS: { readonly [sign: string]: string } = {
  º: '°',
  '˚': '°',
  '″': '"',
  '”': '"',
  '“': '"',
  '′': "'",
  '’': "'",
  '∆': 'Δ',
  '⋅': '·',
  '∙': '·',
  '•': '·',
  '×': '·'
}
const SIGN = new RegExp(`[${Object.keys(SIGNS).join('')}]`, 'g')

/**
 * One key for all the ways to write one unit: `lbf.in`, `lbf in`, `lbf-in` and `lbf*in`; `mm²`, `mm2` and `mm^2`; `mΩ` and `mohm`.
 * Upper and lower case are kept: `mohm` and `Mohm` are nine noughts apart.
 */
export function unitKey(text: string): string {
  const ascii = PLAIN.test(text) ? text : foldSigns(text)
  return ascii.replaceAll('^', '')
}

function foldSigns(text: string): string {
  return text
    .replace(SIGN, sign => SIGNS[sign]!)
    .normalize('NFKC')
    .replaceAll('μ', 'u')
    .replaceAll('Ω', 'ohm')
    .replace(/\.$/, '')
    .replace(/ ?\/ ?/g, '/')
    .replace(/\/\(([^()]*)\)$/, '/$1')
    .replace(/°[ ·]/g, '°')
    .replace(/[ ·*.-]+/g, '·')
    .replace(/\/.*$/, perUnit => perUnit.replaceAll('°C', 'K'))
}

/** One sign for each meaning as it stands: those of ASCII, and those that units and tolerances are written in. */
const PLAIN = /^[!-~±°²·Ωµ]+(?: [!-~±°²·Ωµ]+)*$/
const PLUS_MINUS = /\+ ?\/ ?-|\+-/g

/** How far the wide signs of East Asian keyboards stand above the plain ones. */
const WIDE = 0xfee0

/** The same text with one sign for each meaning. Units are left alone but for that: their own key takes care of them. */
export function foldText(text: string): string {
  return (PLAIN.test(text) ? text : foldSigns(text)).replace(PLUS_MINUS, '±')
}

function foldSigns(text: string): string {
  return text
    .replace(/[\uFF01-\uFF5E]/g, wide => String.fromCharCode(wide.charCodeAt(0) - WIDE))
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/[−‐‑]|^–/g, '-')
    .replace(/(\d?) ?([¼½¾⅐-⅞])/g, (_, whole: string, sign: string) => `${whole && `${whole} `}${sign.normalize('NFKC')}`)
    .replaceAll('⁄', '/')
}

import { type Extent, extentOf, type Mark, type Outline, type Section, type SectionPart } from './section.ts'

/** A drawing unit is a tenth of a millimetre, so that the numbers stay short. */
const PER_MM = 10
const LABEL_MM = 34
const MARGIN_MM = 2

/** The section as SVG, to scale, with its title and its words for whoever does not see it. Fills are patterns as well as tones. */
export function sectionSvg(section: Section, { id = 'section' }: { readonly id?: string } = {}): string {
  const extent = extentOf(section)
  const [x, y] = [extent.leftMm - MARGIN_MM, extent.topMm - MARGIN_MM]
  const [wide, tall] = [extent.rightMm + LABEL_MM - x + MARGIN_MM, extent.bottomMm - y + 2 * MARGIN_MM]
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" role="img" aria-labelledby="${id}-title ${id}-says" viewBox="${[x, y, wide, tall].map(units).join(' ')}">`,
    `<title id="${id}-title">${escaped(section.title)}</title>`,
    `<desc id="${id}-says">${escaped(section.says)}</desc>`,
    hatch(id),
    metal(section, extent, id),
    opened(section.drilled, 'drilled', 'fill="#fff" stroke="#000" stroke-dasharray="12 6"'),
    opened(section.found, 'found', 'fill="#fff" stroke="#000"'),
    thread(section),
    part(section.part),
    `<line class="axis" x1="0" y1="${units(extent.topMm - 1)}" x2="0" y2="${units(extent.bottomMm)}" stroke="#000" stroke-width="1" stroke-dasharray="30 6 6 6"/>`,
    ...marks(section.marks, extent),
    scaleBar(extent),
    '</svg>'
  ].join('\n')
}

function units(mm: number): string {
  return String(Math.round(mm * PER_MM * 10) / 10)
}

function point(xMm: number, yMm: number): string {
  return `${units(xMm)},${units(yMm)}`
}

function hatch(id: string): string {
  return `<defs><pattern id="${id}-metal" width="16" height="16" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect width="16" height="16" fill="#ddd"/><line x1="0" y1="0" x2="0" y2="16" stroke="#777" stroke-width="3"/></pattern></defs>`
}

function metal({ backMm, sideMm }: Section, { leftMm, rightMm, bottomMm }: Extent, id: string): string {
  const [right, bottom] = [sideMm ?? rightMm, backMm ?? bottomMm]
  return `<rect class="metal" x="${units(leftMm)}" y="0" width="${units(right - leftMm)}" height="${units(bottom)}" fill="url(#${id}-metal)"/>`
}

/** A hole from wall to wall over its axis. */
function opened(outline: Outline, name: string, paint: string): string {
  const wallMm = outline.at(-1)?.[0] ?? 0
  const right = outline.map(([r, z]) => point(r, z))
  const left = outline.toReversed().map(([r, z]) => point(-r, z))
  return `<polygon class="${name}" points="${[point(-wallMm, 0), ...left, ...right, point(wallMm, 0)].join(' ')}" ${paint} stroke-width="2"/>`
}

function thread({ thread: cut, drilled }: Section): string {
  const holeMm = drilled.at(-1)?.[0] ?? 0
  if (cut === null || cut.depthMm <= 0) return ''
  const side = (sign: 1 | -1) => {
    const xMm = sign > 0 ? holeMm : -cut.majorMm / 2
    return `<rect class="thread" x="${units(xMm)}" y="0" width="${units(cut.majorMm / 2 - holeMm)}" height="${units(cut.depthMm)}" fill="#555"/>`
  }
  return side(-1) + side(1)
}

/** The shoulder is drawn half as wide again as the thread: its width is not known. */
function part(given: SectionPart | null): string {
  if (given === null) return ''
  const { majorMm, minorMm, endMm, threadEndMm, stackMm } = given
  const box = (name: string, fill: string, { half, top, bottom }: { half: number; top: number; bottom: number }) =>
    `<rect class="${name}" x="${units(-half)}" y="${units(top)}" width="${units(2 * half)}" height="${units(bottom - top)}" fill="${fill}" fill-opacity="0.6" stroke="#000" stroke-width="2"/>`
  return [
    box('shoulder', '#8ab', { half: 0.75 * majorMm, top: -stackMm - 0.35 * majorMm, bottom: -stackMm }),
    ...(stackMm > 0 ? [box('stack', '#b84', { half: 0.75 * majorMm, top: -stackMm, bottom: 0 })] : []),
    box('part', '#8ab', { half: majorMm / 2, top: -stackMm, bottom: threadEndMm }),
    ...(endMm > threadEndMm ? [box('end', '#8ab', { half: minorMm / 2, top: threadEndMm, bottom: endMm })] : [])
  ].join('')
}

const LINE_MM = 3

/** Names at the right, each with a line to its depth; close ones are set apart. */
function marks(all: readonly Mark[], { rightMm }: Extent): readonly string[] {
  let free = Number.NEGATIVE_INFINITY
  return all
    .toSorted((a, b) => a.depthMm - b.depthMm)
    .map(({ depthMm, text }) => {
      const yMm = Math.max(depthMm, free)
      free = yMm + LINE_MM
      const line = `<polyline points="${point(0, depthMm)} ${point(rightMm, depthMm)} ${point(rightMm + 2, yMm)}" fill="none" stroke="#000" stroke-width="1"/>`
      return `${line}<text x="${units(rightMm + 2.5)}" y="${units(yMm + 0.8)}" font-size="24" font-family="sans-serif">${escaped(text)}</text>`
    })
}

/** 5 mm, so that a print can be checked with a rule. */
function scaleBar({ leftMm, bottomMm }: Extent): string {
  const yMm = bottomMm + 1.5
  return `<g class="scale"><line x1="${units(leftMm)}" y1="${units(yMm)}" x2="${units(leftMm + 5)}" y2="${units(yMm)}" stroke="#000" stroke-width="3"/><text x="${units(leftMm + 5.5)}" y="${units(yMm + 0.8)}" font-size="20" font-family="sans-serif">5 mm</text></g>`
}

const MEANT: { readonly [sign: string]: string } = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' }

/** Text as text, whatever stands in it; what a page may not hold is left out. */
function escaped(text: string): string {
  return text.replace(/[\p{Cc}\p{Cf}]/gu, ' ').replace(/[&<>"']/g, sign => MEANT[sign]!)
}

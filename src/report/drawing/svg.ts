import { html } from '../sheet/escape.ts'
import type { Drawing, Shape, Spot } from './drawing.ts'

/** A drawing as one SVG, with its title and its words for whoever does not see it. */
export function svgOf({ id, title, says, across, down, shapes }: Drawing): string {
  const [name, words, hatch] = [`${id}-title`, `${id}-words`, `${id}-hatch`]
  const head = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${number(across)} ${number(down)}" role="img" aria-labelledby="${name} ${words}">`
  const pattern = `<defs><pattern id="${hatch}" class="hatch" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0 0V7"/></pattern></defs>`
  const body = shapes.map(shape => shapeOf(shape, hatch)).join('')
  return `${head}<title id="${name}">${html(title)}</title><desc id="${words}">${html(says)}</desc>${pattern}${body}</svg>`
}

function shapeOf(shape: Shape, hatch: string): string {
  switch (shape.shape) {
    case 'path': {
      const fill = shape.look === 'metal' ? ` style="fill:url(#${hatch})"` : ''
      return `<path class="${shape.look}"${fill} d="${pathOf(shape.spots)}${shape.closed ? 'Z' : ''}"/>`
    }
    case 'dot':
      return `<circle class="${shape.look}" cx="${number(shape.at[0])}" cy="${number(shape.at[1])}" r="${number(shape.radius)}"/>`
    case 'text': {
      const look = shape.bold ? ' class="bold"' : ''
      return `<text${look} x="${number(shape.at[0])}" y="${number(shape.at[1])}" text-anchor="${shape.anchor}">${html(shape.text)}</text>`
    }
    default:
      return shape satisfies never
  }
}

function pathOf(spots: readonly Spot[]): string {
  return spots.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${number(x)} ${number(y)}`).join('')
}

/** Two decimals are finer than any screen. */
function number(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError('a drawing has a place that is no number')
  return String(Number(value.toFixed(2)))
}

import type { Job } from './read-job.ts'
import type { LinkFault } from './unknown-name.ts'

/** What shapes an old bottom goes with the shape that the file names: what did not would be dropped, and the drill set too deep. */
export function bottomLinks({ found, path }: Job['holes'][string]): readonly LinkFault[] {
  const { bottom, 'bottom-angle': angle, 'bottom-radius': fillet } = found
  const named = bottom === null ? 'without bottom' : `with bottom: ${bottom}`
  const at = (field: string) => [...path, 'found', field]
  return [
    ...(bottom === 'radius' && fillet === null
      ? [{ found: 'bottom: radius without its fillet', accepted: 'bottom-radius, as 1 mm', path: at('bottom') }]
      : []),
    ...(bottom !== 'radius' && fillet !== null
      ? [{ found: `bottom-radius ${named}`, accepted: 'bottom: radius', path: at('bottom-radius') }]
      : []),
    ...(bottom !== 'cone' && angle.assumed === undefined
      ? [{ found: `bottom-angle ${named}`, accepted: 'bottom: cone', path: at('bottom-angle') }]
      : [])
  ]
}

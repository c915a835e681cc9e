import { type Closing, closings, type Opened } from './closings.ts'
import { fedLoads } from './fed-loads.ts'
import { soundIn, turnedIn } from './sound-position.ts'
import type { Switching } from './switching.ts'

/**
 * Everything closed that can be at once: no two sources put together that are not together as drawn, and no load that is fed cut off
 * or turned round by what is closed after it. Of several such positions that in which most loads are fed, and of those where least is open.
 */
export function mostClosed(switching: Switching): Opened {
  const [isSound, leavesFed] = [soundIn(switching), leavesFedIn(switching)]
  return mostFed(
    switching,
    closingsOf(switching, (position, before) => isSound(position) && leavesFed(position, before))
  )
}

export function mostFed(switching: Switching, [first, ...others]: readonly Opened[]): Opened {
  if (others.length === 0) return first!
  const fed = new Map([first!, ...others].map(position => [position, fedLoads(switching, position).size]))
  return others.reduce((most, one) => (isMore(one, most) ? one : most), first!)

  function isMore(one: Opened, most: Opened): boolean {
    const more = fed.get(one)! - fed.get(most)!
    return more > 0 || (more === 0 && one.size < most.size)
  }
}

/** Where not all that is drawn open can be closed at once, each way to close as much as can be. */
export function allClosed(switching: Switching): readonly Opened[] {
  return closingsOf(switching, soundIn(switching))
}

function closingsOf({ open }: Switching, isSound: Closing['isSound']): readonly Opened[] {
  return closings({ start: new Set(open), order: open, isSound })
}

/** Whether each load that is fed before one more is closed is fed after it too, the same way round. */
export function leavesFedIn(switching: Switching): (position: Opened, before: Opened) => boolean {
  const known = new Map<Opened, ReadonlyMap<string, boolean>>()
  const turned = (position: Opened) => known.get(position) ?? turnedIn(switching, position)
  return (position, before) => {
    const [was, is] = [turned(before), turned(position)]
    known.set(before, was).set(position, is)
    return [...was].every(([load, way]) => is.get(load) === way)
  }
}

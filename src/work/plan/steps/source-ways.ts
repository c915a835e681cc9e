import { type Kind, kindsOf } from '../../../job/source-kinds.ts'

/** How a kind is made dead before any lead is off, at which end a lead then comes off, and the other way round; null where there is nothing to do. */
interface Ways {
  readonly stop: ((name: string) => string) | null
  readonly start: ((name: string) => string) | null
  readonly lead: 'minus' | 'plus' | null
  readonly caution: string
}

const STANDS_STILL = 'key out, a tag on its start'

const WAYS: { readonly [kind in Kind]: Ways } = {
  charger: {
    stop: name => `unplug the ${name} where it gets its power, before any lead of a battery is off`,
    start: name => `plug the ${name} in again, with every lead on`,
    lead: null,
    caution: 'a tag on the plug: nobody puts it back before the work is done'
  },
  controller: {
    stop: name =>
      `cover the panel (or stop whatever else) that feeds the ${name}, or take that feed off there, before any lead of a battery is off`,
    start: name => `uncover or start again what feeds the ${name}, or put that feed back on, with every lead on`,
    lead: 'plus',
    caution:
      'where its maker gives an order for panel, controller and battery, that order; without one the panel first, then the battery side'
  },
  panel: {
    stop: name => `cover the ${name}, so that no light falls on it`,
    start: name => `uncover the ${name}, with every lead on`,
    lead: 'plus',
    caution: 'where its maker gives an order for panel, controller and battery, that order'
  },
  battery: { stop: null, start: null, lead: 'minus', caution: 'where the maker gives an order for the batteries, that order' },
  charged: {
    stop: name => `switch off or unplug what charges the ${name} (a panel is covered), before any lead of a battery is off`,
    start: name => `switch on, plug in or uncover again what charges the ${name}, with every lead on`,
    lead: null,
    caution: 'a tag on the plug: nobody puts it back before the work is done'
  },
  'charged by engine': {
    stop: name => `see that what charges the ${name} stands still, and that nobody can start it`,
    start: name => `free what charges the ${name} again`,
    lead: null,
    caution: STANDS_STILL
  },
  driven: {
    stop: name => `see that what drives the ${name} stands still, and that nobody can start it`,
    start: name => `free what drives the ${name} again`,
    lead: null,
    caution: STANDS_STILL
  },
  unknown: {
    stop: name => `see how the ${name} is switched off or unplugged, and do that before any lead of a battery is off`,
    start: name => `switch on or plug in the ${name} again, with every lead on`,
    lead: 'minus',
    caution: 'its name does not tell what it is: it may be a battery, and then only its ground lead makes it dead'
  }
}

export function waysOf(what: string): readonly Ways[] {
  return kindsOf(what).map(kind => WAYS[kind])
}

import { DRILL_SETS, type Drill, sameSize } from './drill.ts'
import { drillsOf } from './drill-sets.ts'

export interface Neighbour extends Drill {
  readonly place: 'below' | 'same' | 'above'
}

/** In each set the size itself if it has it, and the next below and above. */
export function neighbours({ diameterMm }: { readonly diameterMm: number }): readonly Neighbour[] {
  return DRILL_SETS.flatMap(set => {
    const drills = drillsOf(set)
    const same = drills.find(drill => sameSize(drill.diameterMm, diameterMm))
    const below = drills.findLast(drill => drill !== same && drill.diameterMm < diameterMm)
    const above = drills.find(drill => drill !== same && drill.diameterMm > diameterMm)
    return [placed(below, 'below'), placed(same, 'same'), placed(above, 'above')].filter(row => row !== undefined)
  })
}

function placed(drill: Drill | undefined, place: Neighbour['place']): Neighbour | undefined {
  return drill && { ...drill, place }
}

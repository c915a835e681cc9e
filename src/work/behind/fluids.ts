// Names of what stands in a machine or is put into one, as parts of patterns over plain words.

/** Surely a liquid in an open vessel, whatever machine it is in. Fuel and fluid are not: either may be a gas under pressure. */
const LIQUID_FUELS = 'petrol|gasoline|diesel|biodiesel|kerosene|kerosine|paraffin|jet (fuel|a1?)|methanol|ethanol'
const WATERY = 'coolants?|antifreeze|glycol|brine|\\p{L}*water'

/** What is a gas, or becomes one as soon as it is let out, fuel and refrigerant alike; a glycol named after one is a coolant. */
const FUEL_GASES =
  '(?<!low pressure )lp(?! (hydraulic|lube|steam|turbine))|lp\\p{L}+|[cl]ng|gpl|\\p{L}*(methane|propane|butane)s?|ethane|(propylene|ethylene)(?! glycol)|propene|\\p{L}*acetylene|hho|hydrogen|h2|ether|dme'
const BURNING_GASES =
  '(natural|town|lp|petroleum|producer|marsh|sewer|digester|wood|coal|cooking|camping|fuel|blast furnace|coke oven|water|landfill|lighter) gas|(auto|bio|syn)gas|mapp'
const OXYGEN_NAMES = 'oxygen|o2'
const INERT_NAMES = 'nitrogen|n2|argon|helium'
const OTHER_GASES =
  'ammonia|nh3|refrigerants?|freon\\p{L}*|halon|h?c?fcs?(?! (hydraulic )?(fluid|oil))|hfos?|r ?\\d{2,4}\\p{L}{0,2}|sf6|so2|chlorine'

/** What else burns, or leaves a vapour that does, whether it is a liquid or not. */
const OTHER_FUELS = [
  'fuels?|petroleum|crude|derv|hvo|e10|e85|jp ?\\d|avgas|mogas|carburett?ors?',
  BURNING_GASES,
  'gas (tank|line|oil|bottle)s?',
  'alcohols?|(white|methylated|surgical) spirits?|turpentine|solvents?|thinners?|acetone|benzine|benzene|toluene|xylene|naphtha|pentane|hexane|heating oil'
].join('|')

export const LIQUID = named('oils?', WATERY, LIQUID_FUELS, '(brake|clutch|hydraulic|steering|transmission|washer) fluid')
export const GAS = named(
  '\\p{L}*gas(es)?|liqu[ei]fied',
  FUEL_GASES,
  OTHER_GASES,
  `air|${INERT_NAMES}|${OXYGEN_NAMES}|carbon|co2|steam|vapou?rs?|mist|fumes?|vacuum|exhaust|boost|pneumatics?`
)
export const FUEL = named(LIQUID_FUELS, FUEL_GASES, OTHER_FUELS)
export const FUEL_GAS = named(FUEL_GASES, BURNING_GASES)
/** Never let out: it burns, poisons, or may not go into the air. */
export const KEPT_GAS = named(FUEL_GASES, BURNING_GASES, OTHER_GASES)
export const AIR = named('air', 'airline|compressors?|pneumatics?')
export const OXYGEN = named(OXYGEN_NAMES, 'lox|oxy|nitrox|enriched air')
export const INERT = named(INERT_NAMES, 'inert')

function named(...names: readonly string[]): RegExp {
  return new RegExp(`\\b(${names.join('|')})\\b`, 'u')
}

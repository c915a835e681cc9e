/** A machine is named after what it burns, and has coolant and oil in it as well. */
const FUELLED =
  '(petrol|gasoline|diesel|(natural |bio|sewer )?gas|lpg|[cl]ng|propane|methane|hydrogen)' +
  ' (engine|motor|generator|genset|tractor|digger|excavator|loader|forklift|(fork ?lift )?truck|lorry|van|bus|car|crane|outboard|boat|tug|ferry|mower)(s|es)?'
const LIQUIDS =
  '(?:(engine|gear|gearbox|axle|hydraulic|transmission) )?oils?|coolants?|antifreeze|cooling water|(brake|clutch|hydraulic|(power )?steering|transmission) fluid|sump|crankcase'
const BETWEEN = '( (of|in|from|a|an|the|its|our|old|small|marine|two|four|2|4|stroke))*'

const ITS_LIQUID = new RegExp(
  `^(?:(?:the|its) )?(?<liquid>${LIQUIDS})(?:${BETWEEN} ${FUELLED}| of (a|the|its|our) (petrol|gasoline|diesel))$`
)

/** Plain words that name oil or coolant of a machine named after its fuel, and nothing else of it, without that machine. */
export function itsLiquid(words: string): string {
  return ITS_LIQUID.exec(words)?.groups?.['liquid'] ?? words
}

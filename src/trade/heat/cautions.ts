/** Texts that go with what is worked out here. They limit it; nothing printed beside them may say more. */
export const ICING =
  'this is no icing protection: heat measured to keep a small float-type carburettor clear was about 586 W (NACA TN 1790, read-secondary); an electric heater of some tens of watts warms metal and cannot stand in for carburettor heat or any other required protection'

export const MARGIN_IS_AN_ESTIMATE =
  'the margin is an estimate of the temperature of the metal above dew or frost point; it says nothing of ice in the air or the fuel'

export const COOLING_NOT_ENTERED =
  'evaporating fuel or a throat cools the air by up to tens of kelvin; that cooling was not entered, so the margin behind it is not judged'

export const FILM_OF_WATER = 'heat that melts and dries water or frost already on the metal is left out: a wet part takes longer'

export const CORRELATION_SPREAD = 'film correlations scatter by 15 to 20 %: measure on the part where it matters'

export const ONE_TEMPERATURE =
  'the Biot number is 0.1 or more: the block is not of one temperature, and its far parts stay colder than this'

export const NO_RADIATION = 'one node: heat goes to the air alone; radiation and conduction into the machine are left out'

export const SLOW_AIR = 'the air moves so slowly that its own rise matters beside it: take the film of both together'

export const BULB_BELOW_FREEZING = 'the wet bulb is at or below 0 °C: it is taken as iced'

export const MAKER = "the maker's instructions, local codes and licensed practice come before this"

export const FLAT_JOINT = 'figures of joints are for flat faces pressed together: none was found for a thread in a hole'

export const WARMS_AS_ONE =
  'a heat test goes before the body of its own: part and casting are warmed as one, and the part stands above that when it has settled'

export const AS_SETTLED =
  'the resistance of a heater follows its temperature: its current, drop and power are those of the settled part, in the coldest air and on the hot day each; on the way there they differ, and with them the time to the target'

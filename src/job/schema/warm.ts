import { CONTACTS, type ContactName } from '../../trade/heat/contact.ts'
import { EMISSIVITIES, type EmissivityName } from '../../trade/heat/emissivity.ts'
import { readMaterial } from '../../trade/heat/read-material.ts'
import { readStart } from '../../trade/heat/read-start.ts'
import { readTarget } from '../../trade/heat/read-target.ts'
import { choice, list, map, quantity, text, word } from '../field.ts'

const CONTACT_NAMES = Object.keys(CONTACTS) as readonly ContactName[]
const EMISSIVITY_NAMES = Object.keys(EMISSIVITIES) as readonly EmissivityName[]

/** Films of air that moves. What each becomes when the air stops follows from it. */
const MOVING_FILMS = ['churchill-bernstein', 'hilpert', 'flat-plate', 'mixed-cylinder', 'mixed-plate'] as const

/** The heated part by itself: a second node. */
const BODY = map(
  'the heated part as a body of its own, hotter than the casting by what its joint holds back; of several heaters one of them, all being alike',
  {
    mass: quantity('mass', 'mass of one', { required: true, example: '41 g', measure: 'scales' }),
    material: word(readMaterial, 'what it is made of, or its specific heat', { required: true, example: 'brass' }),
    contact: quantity('area', 'where one touches the casting: thread flanks and shoulder', { required: true, example: '420 mm2' }),
    joint: choice(CONTACT_NAMES, 'what the joint is like: figures for flat faces, none was found for a thread', {
      required: true,
      example: 'aluminium-pressed'
    })
  },
  { optional: true }
)

const COOLING = map(
  'how much colder the air at the part is than the air around: by a fall, or by what makes it',
  {
    fall: quantity('difference', 'fall, as measured; 0 K where no fuel evaporates and no throat speeds up the air', {
      example: '0 K',
      measure: 'thermometer in the stream at the part, against one outside'
    }),
    'fuel-air': quantity('factor', 'mass of gasoline that evaporates in a mass of air', { example: '0.08' }),
    throat: quantity('speed', 'air in the throat', { example: '60 m/s' })
  },
  { optional: true }
)

const HEAT_TEST = map(
  'a run of some ten minutes with the heater on: goes before mass, film and correlation',
  {
    power: quantity('power', 'power of the heater in the test', { required: true, example: '45 W ± 2 %', measure: 'volts times amperes' }),
    air: quantity('temperature', 'air in the test', { required: true, example: '12 °C' }),
    'air-was': choice(['moving', 'still'], 'whether it moved as it does in work, or stood', { required: true, example: 'still' }),
    accuracy: quantity('difference', 'how far one reading may be off, meant as ±', { least: 0, required: true, example: '0.3 K' }),
    readings: list(
      'temperatures of the metal from switch-on: five or more',
      map('a reading', {
        at: quantity('time', 'time from switch-on', { required: true, example: '2 min' }),
        metal: quantity('temperature', 'temperature of the metal', { required: true, example: '14.2 °C' })
      })
    )
  },
  { optional: true }
)

/** The warming of a casting by its heaters. */
export const WARM = map(
  'the warming of a casting by its heaters',
  {
    heaters: list(
      'holes whose heaters warm it; without it every heater of this file',
      text('name of the hole', { required: true, example: 'left' })
    ),
    mass: quantity('mass', 'mass that gets warm', { example: '1.9 kg', measure: 'scales, or volume times density' }),
    material: word(readMaterial, 'what it is made of, or its specific heat', { example: 'aluminium' }),
    area: quantity('surface', 'surface that the air touches', {
      example: '0.042 m2',
      measure: 'foil laid around it, and weighed or measured'
    }),
    size: quantity('length', 'diameter of a round casting across the air, length of a flat one along it', {
      example: '80 mm',
      measure: 'calliper or tape'
    }),
    correlation: choice(MOVING_FILMS, 'how the film of moving air is worked out; it says round or flat', {
      default: 'churchill-bernstein',
      example: 'churchill-bernstein'
    }),
    film: quantity('film', 'film coefficient in moving air, in place of airflow and size', { example: '25 W/m2K' }),
    'still-film': quantity('film', 'film coefficient in still air, in place of size', { example: '7 W/m2K' }),
    emissivity: choice(EMISSIVITY_NAMES, 'its surface; without it anything from nothing radiated to as much as the blackest here', {
      example: 'aluminium-as-cast',
      measure: 'look at it: bare, painted, oxidised; or run a heat test',
      usual: ['aluminium-rough', 'black-lacquer']
    }),
    machine: quantity('conductance', 'heat that goes into the machine behind it by one kelvin, the machine being as the air', {
      default: '0 W/K',
      why: 'nothing flows into the rest of the machine',
      example: '0.3 W/K',
      measure: 'run a heat test with the casting bolted on as in work: its loss has that in it'
    }),
    body: BODY,
    start: word(readStart, 'the metal at switch-on: a temperature, or as the air; without it surroundings.metal, else as the air', {
      example: 'as the air',
      measure: 'contact thermometer after a night outside'
    }),
    target: word(readTarget, 'what it must reach and hold: a temperature, or so far above dew and frost point', {
      example: '3 K above dew'
    }),
    within: quantity('time', 'time that it may take', { example: '12 min' }),
    cooling: COOLING,
    limit: map(
      'what the metal, a seal or a wire beside it stands',
      {
        greatest: quantity('temperature', 'greatest', { required: true, example: '105 °C' }),
        reason: text('whence that is known', { required: true, example: 'card of the seal' })
      },
      { optional: true }
    ),
    thermostat: map(
      'a thermostat that takes the power off; in the circuit it stands as through: [{ thermostat: T2 }], contacts of a relay that it works as through: [{ what: thermostat contacts of relay K1 }]',
      {
        off: quantity('temperature', 'metal at which it opens', { required: true, example: '60 °C ± 5 K', measure: 'its card' }),
        on: quantity('temperature', 'metal at which it closes again: so far the metal cools while the power is off', {
          example: '45 °C ± 5 K',
          measure: 'its card, or a thermometer on the metal while it cools: what it reads when the power comes on again'
        })
      },
      { optional: true }
    ),
    'heat-test': HEAT_TEST
  },
  { optional: true }
)

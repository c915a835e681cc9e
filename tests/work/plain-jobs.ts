/** A heater of 12 ohm at the end of one wire and a ground without resistance: everything can be worked out by hand. Invented. */
export const WIRED = `fettle: 1
job: { title: one wire }
parts: { heater: { kind: heater, thread: M12x1.5, rated: { power: 48 W, voltage: 24 V } } }
holes: { left: { takes: heater, found: { diameter: 9.8 mm, depth: 19.0 mm } } }
circuit:
  source: { bus: 24 V, resistance: 0 ohm, ground: frame }
  runs:
    - { from: bus, to: left+, wire: { size: 2.5 mm2, length: 10 m, temperature: 20 °C } }
    - { from: left-, to: frame, bond: 0 ohm }
  loads: [{ heater: left, from: left+, to: left- }]
`

/** Greatest resistance of 2.5 mm² class 5 at 20 °C, IEC 60228 table 3 (read-secondary): 7.98 ohm/km. */
export const OHM_PER_M = 0.00798
export const HEATER_OHM = 12

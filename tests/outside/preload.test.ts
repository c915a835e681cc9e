// Table: preload and torque of solid screws at 90 % of yield, against VDI 2230 tables.
// The tables twist the screw fully plastic (section modulus π d³/12), the program elastic (π d³/16): 12/16 of the program's torsion.
import { expect, test } from 'vitest'
import * as body from '../../src/trade/joint/body.ts'
import { classStrength, readPartClass } from '../../src/trade/joint/part-class.ts'
import { preloadN, preloadTorqueNm, threadTorqueNm } from '../../src/trade/joint/preload.ts'
import { longArmMm, threadArmMm } from '../../src/trade/joint/torque-arm.ts'
import { PRELOADS } from './rows/joint-preload-torque.ts'

type Row = (typeof PRELOADS)[number]

const half = (digits: number) => 0.5 * 10 ** -digits

/** Of ISO 724: d2 = d − 0.649519 P, d3 = d − 1.226869 P (read-secondary). */
const pitchDiameterMm = ({ majorMm, pitchMm }: Row) => majorMm - 0.649519 * pitchMm
const rootMm = ({ majorMm, pitchMm }: Row) => majorMm - 1.226869 * pitchMm

function arms(row: Row) {
  const { pitchMm, frictionFactor } = row
  const [washerFaceMm, holeMm] = HEADS[row.majorMm]
  const at = threadArmMm({ pitchMm, pitchDiameterMm: pitchDiameterMm(row), threadFrictionFactor: frictionFactor })
  const bearingDiameterMm = (washerFaceMm + holeMm) / 2
  return { threadArmMm: at, armMm: longArmMm({ threadArmMm: at, bearingDiameterMm, bearingFrictionFactor: frictionFactor }) }
}

/** Washer face of a hexagon head, ISO 4014 (memory), and medium hole, ISO 273 (read-secondary, M4, M6, M10 memory). */
const HEADS = {
  4: [5.9, 4.5],
  5: [6.9, 5.5],
  6: [8.9, 6.6],
  8: [11.6, 9],
  10: [14.6, 11],
  12: [16.6, 13.5],
  14: [19.6, 15.5],
  16: [22.5, 17.5],
  18: [25.3, 20],
  20: [28.2, 22],
  24: [33.6, 26]
} as const

test.each(PRELOADS)('$thread $partClass, friction $frictionFactor: stress at $preloadKn kN ($label)', row => {
  const ringMm = (pitchDiameterMm(row) + rootMm(row)) / 2
  const preload = { preloadN: 1000 * row.preloadKn }
  const tensionMpa = body.tensionMpa({ ...preload, ringAreaMm2: body.ringAreaMm2({ ringMm, boreMm: 0 }) })
  const twistNm = threadTorqueNm({ ...preload, threadArmMm: arms(row).threadArmMm })
  const torsionMpa = (12 / 16) * body.torsionMpa({ threadTorqueNm: twistNm, ringMm, boreMm: 0 })
  const read = readPartClass(row.partClass)
  if (!read.ok) throw new Error(read.fault.found)
  const wantedMpa = 0.9 * classStrength({ partClass: read.value, majorMm: row.majorMm }).yieldMpa
  // Half the last printed digit of the preload, and 0.2 % for the rounding inside the tables.
  const tolerance = half(row.preloadDigits) / row.preloadKn + 0.002
  expect(Math.abs(body.combinedMpa({ tensionMpa, torsionMpa }) / wantedMpa - 1)).toBeLessThanOrEqual(tolerance)
})

test.each(PRELOADS)('$thread $partClass, friction $frictionFactor: $torqueNm N·m for $preloadKn kN ($label)', row => {
  const { armMm } = arms(row)
  const torqueNm = preloadTorqueNm({ armMm, preloadN: 1000 * row.preloadKn })
  // Half the last digits of both printed figures, and 0.3 % for the head.
  const tolerance = half(row.torqueDigits) / row.torqueNm + half(row.preloadDigits) / row.preloadKn + 0.003
  expect(Math.abs(torqueNm / row.torqueNm - 1)).toBeLessThanOrEqual(tolerance)
  expect(Math.abs(preloadN({ torqueNm: row.torqueNm, armMm }) / (1000 * row.preloadKn) - 1)).toBeLessThanOrEqual(tolerance)
})

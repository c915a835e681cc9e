// The standard atmosphere.
import { rowsOf, type ThermalRow } from './thermal-row.ts'

const S1 = "ISO 2533:1975 table 5 (geopotential altitude), as transcribed in a standards publisher's open repository"
const S2 = 'ASHRAE Fundamentals 2017 ch. 1 table 1, as quoted in the psychrolib test file'

export const ATMOSPHERE: readonly ThermalRow[] = [
  ...rowsOf({ quantity: 'temperature', unit: 'C', tolerance: '0.001', source: S1, label: 'read-secondary' }, [
    ['isa-T-0', 'H=0 m geopotential', '15.000'],
    ['isa-T-500', 'H=500 m geopotential', '11.750'],
    ['isa-T-1000', 'H=1000 m geopotential', '8.500'],
    ['isa-T-1500', 'H=1500 m geopotential', '5.250'],
    ['isa-T-2000', 'H=2000 m geopotential', '2.000'],
    ['isa-T-3000', 'H=3000 m geopotential', '-4.500'],
    ['isa-T-4000', 'H=4000 m geopotential', '-11.000'],
    ['isa-T-4500', 'H=4500 m geopotential', '-14.250'],
    ['isa-T-5000', 'H=5000 m geopotential', '-17.500'],
    ['isa-T-8000', 'H=8000 m geopotential', '-37.000'],
    ['isa-T-10000', 'H=10000 m geopotential', '-50.000'],
    ['isa-T-11000', 'H=11000 m geopotential', '-56.500']
  ]),
  ...rowsOf({ quantity: 'pressure', unit: 'hPa', tolerance: '1 in last digit', source: S1, label: 'read-secondary' }, [
    ['isa-p-0', 'H=0 m geopotential', '1013.25'],
    ['isa-p-500', 'H=500 m geopotential', '954.608'],
    ['isa-p-1000', 'H=1000 m geopotential', '898.746'],
    ['isa-p-1500', 'H=1500 m geopotential', '845.56'],
    ['isa-p-2000', 'H=2000 m geopotential', '794.952'],
    ['isa-p-3000', 'H=3000 m geopotential', '701.085'],
    ['isa-p-4000', 'H=4000 m geopotential', '616.402'],
    ['isa-p-4500', 'H=4500 m geopotential', '577.283'],
    ['isa-p-5000', 'H=5000 m geopotential', '540.199'],
    ['isa-p-8000', 'H=8000 m geopotential', '355.998'],
    ['isa-p-10000', 'H=10000 m geopotential', '264.362'],
    ['isa-p-11000', 'H=11000 m geopotential', '226.32']
  ]),
  ...rowsOf({ quantity: 'density', unit: 'kg/m3', tolerance: '1 in last digit', source: S1, label: 'read-secondary' }, [
    ['isa-rho-0', 'H=0 m geopotential', '1.225'],
    ['isa-rho-500', 'H=500 m geopotential', '1.16727'],
    ['isa-rho-1000', 'H=1000 m geopotential', '1.11164'],
    ['isa-rho-1500', 'H=1500 m geopotential', '1.05807'],
    ['isa-rho-2000', 'H=2000 m geopotential', '1.00649'],
    ['isa-rho-3000', 'H=3000 m geopotential', '0.909122'],
    ['isa-rho-4000', 'H=4000 m geopotential', '0.819129'],
    ['isa-rho-4500', 'H=4500 m geopotential', '0.776774'],
    ['isa-rho-5000', 'H=5000 m geopotential', '0.736116'],
    ['isa-rho-8000', 'H=8000 m geopotential', '0.525167'],
    ['isa-rho-10000', 'H=10000 m geopotential', '0.412706'],
    ['isa-rho-11000', 'H=11000 m geopotential', '0.363918']
  ]),
  ...rowsOf({ quantity: 'pressure', unit: 'Pa', tolerance: '1', source: S2, label: 'read-secondary' }, [
    ['isa-ashrae-500', 'altitude=500 m', '95461'],
    ['isa-ashrae-1000', 'altitude=1000 m', '89875'],
    ['isa-ashrae-4000', 'altitude=4000 m', '61640'],
    ['isa-ashrae-10000', 'altitude=10000 m', '26436']
  ])
]

// Cooling by evaporation and in a throat.
import { rowsOf, type ThermalRow } from './thermal-row.ts'

const S1 = 'NACA TN 1790 (1949), quoted at length by an icing-literature review site; the abstract was read on the NASA report server'
const S2 = 'US alternative-fuel property table, reproduced on a document site'
const S3 = 'energy balance f L / (cp,a + f cp,f)'
const S4 = 'steady-flow energy equation V^2/(2 cp)'

export const ICING: readonly ThermalRow[] = [
  ...rowsOf(
    {
      quantity: 'heating rate that kept a float carburettor and manifold clear',
      unit: 'Btu/h',
      tolerance: '',
      source: S1,
      label: 'read-secondary'
    },
    [['tn1790-heat', '65-85 hp size; high cruise; saturated air at 35 F', '2000']]
  ),
  ...rowsOf({ quantity: 'latent heat of vaporisation of gasoline', unit: 'Btu/lb', tolerance: '', source: S2, label: 'read-secondary' }, [
    ['gas-lv', '60 F', '150']
  ]),
  ...rowsOf(
    {
      quantity: 'mixture temperature drop, all fuel evaporated, no heat gained',
      unit: 'K',
      tolerance: '0.01',
      source: S3,
      label: 'memory'
    },
    [
      ['evap-350-14.7', 'L=350 kJ/kg; A/F=14.7; cp air 1.005, cp fuel vapour 1.7 kJ/kgK', '21.25'],
      ['evap-350-12.5', 'L=350 kJ/kg; A/F=12.5; cp air 1.005, cp fuel vapour 1.7 kJ/kgK', '24.54']
    ]
  ),
  ...rowsOf({ quantity: 'static temperature drop in a throat', unit: 'K', tolerance: '0.01', source: S4, label: 'memory' }, [
    ['venturi-50', 'velocity=50 m/s; cp=1005 J/kgK', '1.24'],
    ['venturi-100', 'velocity=100 m/s; cp=1005 J/kgK', '4.98']
  ])
]

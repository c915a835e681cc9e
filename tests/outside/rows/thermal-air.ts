// Properties of air.
import { rowsOf, type ThermalRow } from './thermal-row.ts'

const S1 = 'Cengel table A-15, air at 1 atm, reproduced on two sites'
const S2 = 'CoolProp 8.0.0, run here'
const S3 = 'Incropera table A.4, values as used in examples 7.4, 9.1, 9.2, 9.4, 9.5 of an open textbook companion'
const S4 = 'Incropera table A.4'

export const AIR: readonly ThermalRow[] = [
  ...rowsOf({ quantity: 'density', unit: 'kg/m3', tolerance: '1 %', source: S1, label: 'read-secondary' }, [
    ['air-cg--40-density', 't=-40 C; 1 atm', '1.514'],
    ['air-cg--20-density', 't=-20 C; 1 atm', '1.394'],
    ['air-cg-0-density', 't=0 C; 1 atm', '1.292'],
    ['air-cg-20-density', 't=20 C; 1 atm', '1.204'],
    ['air-cg-40-density', 't=40 C; 1 atm', '1.127'],
    ['air-cg-60-density', 't=60 C; 1 atm', '1.059'],
    ['air-cg-80-density', 't=80 C; 1 atm', '0.9994']
  ]),
  ...rowsOf({ quantity: 'specific heat', unit: 'J/kgK', tolerance: '1 %', source: S1, label: 'read-secondary' }, [
    ['air-cg--40-specific', 't=-40 C; 1 atm', '1002'],
    ['air-cg--20-specific', 't=-20 C; 1 atm', '1005'],
    ['air-cg-0-specific', 't=0 C; 1 atm', '1006'],
    ['air-cg-20-specific', 't=20 C; 1 atm', '1007'],
    ['air-cg-40-specific', 't=40 C; 1 atm', '1007'],
    ['air-cg-60-specific', 't=60 C; 1 atm', '1007'],
    ['air-cg-80-specific', 't=80 C; 1 atm', '1008']
  ]),
  ...rowsOf({ quantity: 'conductivity', unit: 'W/mK', tolerance: '1 %', source: S1, label: 'read-secondary' }, [
    ['air-cg--40-conductivity', 't=-40 C; 1 atm', '0.02057'],
    ['air-cg--20-conductivity', 't=-20 C; 1 atm', '0.02211'],
    ['air-cg-0-conductivity', 't=0 C; 1 atm', '0.02364'],
    ['air-cg-20-conductivity', 't=20 C; 1 atm', '0.02514'],
    ['air-cg-40-conductivity', 't=40 C; 1 atm', '0.02662'],
    ['air-cg-60-conductivity', 't=60 C; 1 atm', '0.02808'],
    ['air-cg-80-conductivity', 't=80 C; 1 atm', '0.02953']
  ]),
  ...rowsOf({ quantity: 'dynamic viscosity', unit: 'Pa s', tolerance: '1 %', source: S1, label: 'read-secondary' }, [
    ['air-cg--40-dynamic', 't=-40 C; 1 atm', '1.527e-5'],
    ['air-cg--20-dynamic', 't=-20 C; 1 atm', '1.630e-5'],
    ['air-cg-0-dynamic', 't=0 C; 1 atm', '1.729e-5'],
    ['air-cg-20-dynamic', 't=20 C; 1 atm', '1.825e-5'],
    ['air-cg-40-dynamic', 't=40 C; 1 atm', '1.918e-5'],
    ['air-cg-60-dynamic', 't=60 C; 1 atm', '2.008e-5'],
    ['air-cg-80-dynamic', 't=80 C; 1 atm', '2.096e-5']
  ]),
  ...rowsOf({ quantity: 'kinematic viscosity', unit: 'm2/s', tolerance: '1 %', source: S1, label: 'read-secondary' }, [
    ['air-cg--40-kinematic', 't=-40 C; 1 atm', '1.008e-5'],
    ['air-cg--20-kinematic', 't=-20 C; 1 atm', '1.169e-5'],
    ['air-cg-0-kinematic', 't=0 C; 1 atm', '1.338e-5'],
    ['air-cg-20-kinematic', 't=20 C; 1 atm', '1.516e-5'],
    ['air-cg-40-kinematic', 't=40 C; 1 atm', '1.702e-5'],
    ['air-cg-60-kinematic', 't=60 C; 1 atm', '1.896e-5'],
    ['air-cg-80-kinematic', 't=80 C; 1 atm', '2.097e-5']
  ]),
  ...rowsOf({ quantity: 'Prandtl number', unit: '1', tolerance: '1 %', source: S1, label: 'read-secondary' }, [
    ['air-cg--40-Prandtl', 't=-40 C; 1 atm', '0.7436'],
    ['air-cg--20-Prandtl', 't=-20 C; 1 atm', '0.7408'],
    ['air-cg-0-Prandtl', 't=0 C; 1 atm', '0.7362'],
    ['air-cg-20-Prandtl', 't=20 C; 1 atm', '0.7309'],
    ['air-cg-40-Prandtl', 't=40 C; 1 atm', '0.7255'],
    ['air-cg-60-Prandtl', 't=60 C; 1 atm', '0.7202'],
    ['air-cg-80-Prandtl', 't=80 C; 1 atm', '0.7154']
  ]),
  ...rowsOf({ quantity: 'density', unit: 'kg/m3', tolerance: '1 %', source: S2, label: 'read-secondary' }, [
    ['air-cp-250-density-dens', 'T=250 K; 101325 Pa; dry air', '1.4133'],
    ['air-cp-270-density-dens', 'T=270 K; 101325 Pa; dry air', '1.3082'],
    ['air-cp-280-density-dens', 'T=280 K; 101325 Pa; dry air', '1.2613'],
    ['air-cp-300-density-dens', 'T=300 K; 101325 Pa; dry air', '1.1770'],
    ['air-cp-310-density-dens', 'T=310 K; 101325 Pa; dry air', '1.1389'],
    ['air-cp-320-density-dens', 'T=320 K; 101325 Pa; dry air', '1.1033'],
    ['air-cp-340-density-dens', 'T=340 K; 101325 Pa; dry air', '1.0382'],
    ['air-cp-350-density-dens', 'T=350 K; 101325 Pa; dry air', '1.0085']
  ]),
  ...rowsOf({ quantity: 'specific heat', unit: 'J/kgK', tolerance: '1 %', source: S2, label: 'read-secondary' }, [
    ['air-cp-250-specific-heat', 'T=250 K; 101325 Pa; dry air', '1005.5'],
    ['air-cp-270-specific-heat', 'T=270 K; 101325 Pa; dry air', '1005.6'],
    ['air-cp-280-specific-heat', 'T=280 K; 101325 Pa; dry air', '1005.8'],
    ['air-cp-300-specific-heat', 'T=300 K; 101325 Pa; dry air', '1006.4'],
    ['air-cp-310-specific-heat', 'T=310 K; 101325 Pa; dry air', '1006.8'],
    ['air-cp-320-specific-heat', 'T=320 K; 101325 Pa; dry air', '1007.3'],
    ['air-cp-340-specific-heat', 'T=340 K; 101325 Pa; dry air', '1008.5'],
    ['air-cp-350-specific-heat', 'T=350 K; 101325 Pa; dry air', '1009.2']
  ]),
  ...rowsOf({ quantity: 'conductivity', unit: 'W/mK', tolerance: '1 %', source: S2, label: 'read-secondary' }, [
    ['air-cp-250-conductivity-cond', 'T=250 K; 101325 Pa; dry air', '0.02256'],
    ['air-cp-270-conductivity-cond', 'T=270 K; 101325 Pa; dry air', '0.02412'],
    ['air-cp-280-conductivity-cond', 'T=280 K; 101325 Pa; dry air', '0.02488'],
    ['air-cp-300-conductivity-cond', 'T=300 K; 101325 Pa; dry air', '0.02638'],
    ['air-cp-310-conductivity-cond', 'T=310 K; 101325 Pa; dry air', '0.02712'],
    ['air-cp-320-conductivity-cond', 'T=320 K; 101325 Pa; dry air', '0.02785'],
    ['air-cp-340-conductivity-cond', 'T=340 K; 101325 Pa; dry air', '0.02929'],
    ['air-cp-350-conductivity-cond', 'T=350 K; 101325 Pa; dry air', '0.03000']
  ]),
  ...rowsOf({ quantity: 'dynamic viscosity', unit: 'Pa s', tolerance: '1 %', source: S2, label: 'read-secondary' }, [
    ['air-cp-250-dynamic-visc', 'T=250 K; 101325 Pa; dry air', '1.6038e-05'],
    ['air-cp-270-dynamic-visc', 'T=270 K; 101325 Pa; dry air', '1.7060e-05'],
    ['air-cp-280-dynamic-visc', 'T=280 K; 101325 Pa; dry air', '1.7560e-05'],
    ['air-cp-300-dynamic-visc', 'T=300 K; 101325 Pa; dry air', '1.8537e-05'],
    ['air-cp-310-dynamic-visc', 'T=310 K; 101325 Pa; dry air', '1.9016e-05'],
    ['air-cp-320-dynamic-visc', 'T=320 K; 101325 Pa; dry air', '1.9488e-05'],
    ['air-cp-340-dynamic-visc', 'T=340 K; 101325 Pa; dry air', '2.0413e-05'],
    ['air-cp-350-dynamic-visc', 'T=350 K; 101325 Pa; dry air', '2.0867e-05']
  ]),
  ...rowsOf({ quantity: 'kinematic viscosity', unit: 'm2/s', tolerance: '1 %', source: S2, label: 'read-secondary' }, [
    ['air-cp-250-kinematic-visc', 'T=250 K; 101325 Pa; dry air', '1.1348e-05'],
    ['air-cp-270-kinematic-visc', 'T=270 K; 101325 Pa; dry air', '1.3041e-05'],
    ['air-cp-280-kinematic-visc', 'T=280 K; 101325 Pa; dry air', '1.3922e-05'],
    ['air-cp-300-kinematic-visc', 'T=300 K; 101325 Pa; dry air', '1.5750e-05'],
    ['air-cp-310-kinematic-visc', 'T=310 K; 101325 Pa; dry air', '1.6696e-05'],
    ['air-cp-320-kinematic-visc', 'T=320 K; 101325 Pa; dry air', '1.7664e-05'],
    ['air-cp-340-kinematic-visc', 'T=340 K; 101325 Pa; dry air', '1.9661e-05'],
    ['air-cp-350-kinematic-visc', 'T=350 K; 101325 Pa; dry air', '2.0691e-05']
  ]),
  ...rowsOf({ quantity: 'thermal diffusivity', unit: 'm2/s', tolerance: '1 %', source: S2, label: 'read-secondary' }, [
    ['air-cp-250-thermal-diff', 'T=250 K; 101325 Pa; dry air', '1.5878e-05'],
    ['air-cp-270-thermal-diff', 'T=270 K; 101325 Pa; dry air', '1.8333e-05'],
    ['air-cp-280-thermal-diff', 'T=280 K; 101325 Pa; dry air', '1.9614e-05'],
    ['air-cp-300-thermal-diff', 'T=300 K; 101325 Pa; dry air', '2.2275e-05'],
    ['air-cp-310-thermal-diff', 'T=310 K; 101325 Pa; dry air', '2.3654e-05'],
    ['air-cp-320-thermal-diff', 'T=320 K; 101325 Pa; dry air', '2.5065e-05'],
    ['air-cp-340-thermal-diff', 'T=340 K; 101325 Pa; dry air', '2.7978e-05'],
    ['air-cp-350-thermal-diff', 'T=350 K; 101325 Pa; dry air', '2.9478e-05']
  ]),
  ...rowsOf({ quantity: 'Prandtl number', unit: '1', tolerance: '1 %', source: S2, label: 'read-secondary' }, [
    ['air-cp-250-Prandtl-numb', 'T=250 K; 101325 Pa; dry air', '0.7147'],
    ['air-cp-270-Prandtl-numb', 'T=270 K; 101325 Pa; dry air', '0.7113'],
    ['air-cp-280-Prandtl-numb', 'T=280 K; 101325 Pa; dry air', '0.7098'],
    ['air-cp-300-Prandtl-numb', 'T=300 K; 101325 Pa; dry air', '0.7071'],
    ['air-cp-310-Prandtl-numb', 'T=310 K; 101325 Pa; dry air', '0.7058'],
    ['air-cp-320-Prandtl-numb', 'T=320 K; 101325 Pa; dry air', '0.7047'],
    ['air-cp-340-Prandtl-numb', 'T=340 K; 101325 Pa; dry air', '0.7028'],
    ['air-cp-350-Prandtl-numb', 'T=350 K; 101325 Pa; dry air', '0.7019']
  ]),
  ...rowsOf({ quantity: 'kinematic viscosity', unit: '1e-6 m2/s', tolerance: '0.5 %', source: S3, label: 'read-secondary' }, [
    ['air-inc-300-kinematic', 'T=300 K; 1 atm', '15.89'],
    ['air-inc-320-kinematic', 'T=320 K; 1 atm', '17.95'],
    ['air-inc-350-kinematic', 'T=350 K; 1 atm', '20.92'],
    ['air-inc-400-kinematic', 'T=400 K; 1 atm', '26.4']
  ]),
  ...rowsOf({ quantity: 'conductivity', unit: '1e-3 W/mK', tolerance: '0.5 %', source: S3, label: 'read-secondary' }, [
    ['air-inc-300-conductivity', 'T=300 K; 1 atm', '26.3'],
    ['air-inc-350-conductivity', 'T=350 K; 1 atm', '30.0'],
    ['air-inc-400-conductivity', 'T=400 K; 1 atm', '33.8']
  ]),
  ...rowsOf({ quantity: 'Prandtl number', unit: '1', tolerance: '0.5 %', source: S3, label: 'read-secondary' }, [
    ['air-inc-300-Prandtl', 'T=300 K; 1 atm', '0.707'],
    ['air-inc-350-Prandtl', 'T=350 K; 1 atm', '0.7'],
    ['air-inc-400-Prandtl', 'T=400 K; 1 atm', '0.69']
  ]),
  ...rowsOf({ quantity: 'thermal diffusivity', unit: '1e-6 m2/s', tolerance: '0.5 %', source: S3, label: 'read-secondary' }, [
    ['air-inc-350-thermal', 'T=350 K; 1 atm', '29.9'],
    ['air-inc-400-thermal', 'T=400 K; 1 atm', '38.3']
  ]),
  ...rowsOf(
    {
      quantity: 'row: rho; cp; mu 1e-7; nu 1e-6; k 1e-3; alpha 1e-6; Pr',
      unit: 'mixed SI',
      tolerance: '0.5 %',
      source: S4,
      label: 'memory'
    },
    [
      ['air-incrow-250', 'T=250 K', '1.3947; 1006; 159.6; 11.44; 22.3; 15.9; 0.720'],
      ['air-incrow-300', 'T=300 K', '1.1614; 1007; 184.6; 15.89; 26.3; 22.5; 0.707'],
      ['air-incrow-350', 'T=350 K', '0.9950; 1009; 208.2; 20.92; 30.0; 29.9; 0.700']
    ]
  )
]

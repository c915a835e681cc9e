// Worked examples of heat transfer.
import { rowsOf, type ThermalRow } from './thermal-row.ts'

const S1 =
  'Incropera, DeWitt, Bergman, Lavine, Fundamentals of Heat and Mass Transfer 6th ed., example 5.1 p. 261: inputs and method as reproduced in an open textbook-companion repository; arithmetic redone here'
const S2 =
  'Incropera, DeWitt, Bergman, Lavine, Fundamentals of Heat and Mass Transfer 6th ed., example 3.2 p. 107: inputs and method as reproduced in an open textbook-companion repository; arithmetic redone here'
const S3 =
  'Incropera, DeWitt, Bergman, Lavine, Fundamentals of Heat and Mass Transfer 6th ed., example 7.4 p. 428: inputs and method as reproduced in an open textbook-companion repository; arithmetic redone here'
const S4 =
  'Incropera, DeWitt, Bergman, Lavine, Fundamentals of Heat and Mass Transfer 6th ed., example 7.4 comments: inputs and method as reproduced in an open textbook-companion repository; arithmetic redone here'
const S5 =
  'Incropera, DeWitt, Bergman, Lavine, Fundamentals of Heat and Mass Transfer 6th ed., example 9.2 p. 572: inputs and method as reproduced in an open textbook-companion repository; arithmetic redone here'
const S6 =
  'Incropera, DeWitt, Bergman, Lavine, Fundamentals of Heat and Mass Transfer 6th ed., example 9.4 p. 580: inputs and method as reproduced in an open textbook-companion repository; arithmetic redone here'
const S7 = 'closed form dT = P/(hA) (1 - exp(-t/tau)), tau = m c/(hA); invented inputs'
const S8 = 'two-node linear model, exact by matrix exponential (scipy), invented inputs'
const S9 = 'grey body to large surroundings'

export const HEAT_TRANSFER: readonly ThermalRow[] = [
  ...rowsOf({ quantity: 'diameter for a 1 s time constant', unit: 'm', tolerance: '0.5 %', source: S1, label: 'read-secondary' }, [
    ['inc5.1-D', 'sphere thermocouple junction; h=400 W/m2K; k=20; c=400 J/kgK; rho=8500; Ti=25, Tinf=200 C; tau=1 s', '0.000706']
  ]),
  ...rowsOf({ quantity: 'Biot number h(D/6)/k', unit: '1', tolerance: '0.5 %', source: S1, label: 'read-secondary' }, [
    ['inc5.1-Bi', 'sphere thermocouple junction; h=400 W/m2K; k=20; c=400 J/kgK; rho=8500; Ti=25, Tinf=200 C; tau=1 s', '0.002353']
  ]),
  ...rowsOf({ quantity: 'time to reach 199 C', unit: 's', tolerance: '0.5 %', source: S1, label: 'read-secondary' }, [
    ['inc5.1-t', 'sphere thermocouple junction; h=400 W/m2K; k=20; c=400 J/kgK; rho=8500; Ti=25, Tinf=200 C; tau=1 s', '5.16']
  ]),
  ...rowsOf({ quantity: 'chip temperature', unit: 'C', tolerance: '0.05', source: S2, label: 'read-secondary' }, [
    ['inc3.2-T', 'q"=1e4 W/m2 leaving both faces; h=100 each; joint R"=0.9e-4 m2K/W; Al 8 mm k=239; air 25 C', '75.31']
  ]),
  ...rowsOf({ quantity: 'measured mean coefficient', unit: 'W/m2K', tolerance: '0.5 %', source: S3, label: 'read-secondary' }, [
    ['inc7.4-h', 'cylinder 12.7 mm x 94 mm in air 10 m/s, 26.2 C; surface 128.4 C; 46 W less 15 %', '102.0']
  ]),
  ...rowsOf({ quantity: 'Reynolds number at film temperature', unit: '1', tolerance: '0.5 %', source: S3, label: 'read-secondary' }, [
    ['inc7.4-Re', 'Re from nu=20.92e-6, k=0.0300, Pr=0.70 (air 350 K film); D=12.7 mm; V=10 m/s', '6071']
  ]),
  ...rowsOf({ quantity: 'Churchill-Bernstein Nusselt number', unit: '1', tolerance: '0.5 %', source: S4, label: 'memory' }, [
    ['inc7.4-CB-Nu', 'Re from nu=20.92e-6, k=0.0300, Pr=0.70 (air 350 K film); D=12.7 mm; V=10 m/s', '40.64']
  ]),
  ...rowsOf({ quantity: 'Churchill-Bernstein coefficient', unit: 'W/m2K', tolerance: '0.5 %', source: S4, label: 'memory' }, [
    ['inc7.4-CB-h', 'Re from nu=20.92e-6, k=0.0300, Pr=0.70 (air 350 K film); D=12.7 mm; V=10 m/s', '95.99']
  ]),
  ...rowsOf({ quantity: 'Rayleigh number', unit: '1', tolerance: '0.5 %', source: S5, label: 'read-secondary' }, [
    [
      'inc9.2-Ra',
      'vertical plate L=0.71 m, W=1.02 m; 232 C in air 23 C; nu=26.4e-6 k=0.0338 alpha=38.3e-6 Pr=0.69 beta=0.0025',
      '1814000000.0'
    ]
  ]),
  ...rowsOf({ quantity: 'Churchill-Chu vertical plate (full range)', unit: '1', tolerance: '0.5 %', source: S5, label: 'read-secondary' }, [
    ['inc9.2-Nu', 'vertical plate L=0.71 m, W=1.02 m; 232 C in air 23 C; nu=26.4e-6 k=0.0338 alpha=38.3e-6 Pr=0.69 beta=0.0025', '147.2']
  ]),
  ...rowsOf({ quantity: 'heat rate', unit: 'W', tolerance: '0.5 %', source: S5, label: 'read-secondary' }, [
    ['inc9.2-q', 'vertical plate L=0.71 m, W=1.02 m; 232 C in air 23 C; nu=26.4e-6 k=0.0338 alpha=38.3e-6 Pr=0.69 beta=0.0025', '1060']
  ]),
  ...rowsOf({ quantity: 'Rayleigh number', unit: '1', tolerance: '0.5 %', source: S6, label: 'read-secondary' }, [
    [
      'inc9.4-Ra',
      'horizontal pipe D=0.1 m; 165 C in air 23 C; nu=22.8e-6 k=0.0313 alpha=32.8e-6 Pr=0.697 beta=0.002725; emissivity 0.85',
      '5076000.0'
    ]
  ]),
  ...rowsOf({ quantity: 'Churchill-Chu horizontal cylinder', unit: '1', tolerance: '0.5 %', source: S6, label: 'read-secondary' }, [
    [
      'inc9.4-Nu',
      'horizontal pipe D=0.1 m; 165 C in air 23 C; nu=22.8e-6 k=0.0313 alpha=32.8e-6 Pr=0.697 beta=0.002725; emissivity 0.85',
      '23.09'
    ]
  ]),
  ...rowsOf({ quantity: 'convection per length', unit: 'W/m', tolerance: '1 %', source: S6, label: 'read-secondary' }, [
    [
      'inc9.4-qc',
      'horizontal pipe D=0.1 m; 165 C in air 23 C; nu=22.8e-6 k=0.0313 alpha=32.8e-6 Pr=0.697 beta=0.002725; emissivity 0.85',
      '322.5'
    ]
  ]),
  ...rowsOf({ quantity: 'radiation per length', unit: 'W/m', tolerance: '0.5 %', source: S6, label: 'read-secondary' }, [
    [
      'inc9.4-qr',
      'horizontal pipe D=0.1 m; 165 C in air 23 C; nu=22.8e-6 k=0.0313 alpha=32.8e-6 Pr=0.697 beta=0.002725; emissivity 0.85',
      '441.0'
    ]
  ]),
  ...rowsOf({ quantity: 'total per length', unit: 'W/m', tolerance: '1 %', source: S6, label: 'read-secondary' }, [
    [
      'inc9.4-q',
      'horizontal pipe D=0.1 m; 165 C in air 23 C; nu=22.8e-6 k=0.0313 alpha=32.8e-6 Pr=0.697 beta=0.002725; emissivity 0.85',
      '763.5'
    ]
  ]),
  ...rowsOf({ quantity: 'temperature rise at time t', unit: 'K', tolerance: '1e-4', source: S7, label: 'memory' }, [
    ['lump-60-300', 'P=60 W; h=15; A=0.02 m2; m=0.5 kg; c=963; t=300 s', '34.0973'],
    ['lump-60-600', 'P=60 W; h=15; A=0.02 m2; m=0.5 kg; c=963; t=600 s', '62.3815'],
    ['lump-100-900', 'P=100 W; h=10; A=0.03 m2; m=1.2 kg; c=1050; t=900 s', '64.2941']
  ]),
  ...rowsOf({ quantity: 'node 1 rise', unit: 'K', tolerance: '1e-3', source: S8, label: 'memory' }, [
    ['two-1-50-60', 'P=50 W into node 1; C1=20 C2=400 J/K; G12=1.5 G2inf=0.4 W/K; t=60 s; start at ambient', '37.0253'],
    ['two-1-50-600', 'P=50 W into node 1; C1=20 C2=400 J/K; G12=1.5 G2inf=0.4 W/K; t=600 s; start at ambient', '85.9368']
  ]),
  ...rowsOf({ quantity: 'node 2 rise', unit: 'K', tolerance: '1e-3', source: S8, label: 'memory' }, [
    ['two-2-50-60', 'P=50 W into node 1; C1=20 C2=400 J/K; G12=1.5 G2inf=0.4 W/K; t=60 s; start at ambient', '5.5085'],
    ['two-2-50-600', 'P=50 W into node 1; C1=20 C2=400 J/K; G12=1.5 G2inf=0.4 W/K; t=600 s; start at ambient', '53.5222']
  ]),
  ...rowsOf({ quantity: 'node 1 steady rise', unit: 'K', tolerance: '1e-4', source: S8, label: 'memory' }, [
    ['two-ss1', 'P=50; G12=1.5; G2inf=0.4', '158.3333']
  ]),
  ...rowsOf(
    { quantity: 'radiation coefficient e sigma (T1^4-T2^4)/(T1-T2)', unit: 'W/m2K', tolerance: '0.001', source: S9, label: 'memory' },
    [
      ['rad-0.47', 'emissivity=0.47; 60 C to 20 C; sigma=5.67e-8', '3.287'],
      ['rad-0.97', 'emissivity=0.97; 60 C to 20 C; sigma=5.67e-8', '6.783']
    ]
  )
]

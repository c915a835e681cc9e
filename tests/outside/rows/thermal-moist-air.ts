// Vapour pressures, dew and frost points, humidity ratios.
import { rowsOf, type ThermalRow } from './thermal-row.ts'

const S1 = 'Murphy and Koop 2005, equations 7 and 10 as reproduced in public code; evaluated here'
const S2 =
  'IAPWS R14-08(2011) sublimation equation, coefficients as reproduced in public code; evaluated here; returns the release check value 8.94735 Pa at 230 K'
const S3 = 'WMO-No. 8 (CIMO guide) Magnus form, constants as reproduced in public code that names WMO; evaluated here'
const S4 = 'Buck 1996 as listed on a university page of vapour pressure formulations; evaluated here'
const S5 = 'Buck 1981 as listed on a university page of vapour pressure formulations; evaluated here'
const S6 =
  'IAPWS-95 saturation line as implemented by CoolProp 8.0.0, run here; the same program gives 3536.81 Pa at 300 K against the IF97 check value 3536.58941 Pa'
const S7 = 'Smithsonian Meteorological Tables 6th ed., tables 94 and 96 (Goff-Gratch)'
const S8 = 'ASHRAE Handbook Fundamentals 2017 ch. 1 table 3, as quoted in the test file of the psychrolib library'
const S9 = "vapour pressure table in an industrial hygrometer maker's manual"
const S10 = 'IAPWS-IF97 table 35 check value, seen in several independent public test suites'
const S11 = 'IAPWS R14-08(2011) check value, seen in a public test suite'
const S12 = 'IAPWS, reducing pressure of R14-08'
const S13 = 'Murphy and Koop 2005, equations 7 and 10 as reproduced in public code; evaluated here and inverted'
const S14 = 'CoolProp 8.0.0 HAPropsSI (ASHRAE RP-1485 moist air), run here'
const S15 = 'psychrolib 1.1.1 (npm), run here under Node 20'
const S16 = 'psychrolib 1.1.1 (npm), run here'
const S17 = 'ASHRAE Handbook Fundamentals 2017 ch. 1 table 2, as quoted in the test file of the psychrolib library'
const S18 = 'ASHRAE Fundamentals 2017 ch. 1 example 1 (chart reading), as quoted in the psychrolib test file'

export const VAPOUR_PRESSURE: readonly ThermalRow[] = [
  ...rowsOf(
    {
      quantity: 'saturation vapour pressure over water (supercooled)',
      unit: 'Pa',
      tolerance: '0.1 %',
      source: S1,
      label: 'read-secondary'
    },
    [
      ['vp-mk-w-40', 't=-40 C', '18.912'],
      ['vp-mk-w-30', 't=-30 C', '50.936'],
      ['vp-mk-w-25', 't=-25 C', '80.777'],
      ['vp-mk-w-20', 't=-20 C', '125.504'],
      ['vp-mk-w-10', 't=-10 C', '286.453']
    ]
  ),
  ...rowsOf({ quantity: 'saturation vapour pressure over ice', unit: 'Pa', tolerance: '0.02 %', source: S2, label: 'read-secondary' }, [
    ['vp-iapws-i-40', 't=-40 C', '12.841'],
    ['vp-iapws-i-30', 't=-30 C', '38.005'],
    ['vp-iapws-i-25', 't=-25 C', '63.274'],
    ['vp-iapws-i-20', 't=-20 C', '103.239'],
    ['vp-iapws-i-10', 't=-10 C', '259.874'],
    ['vp-iapws-i0', 't=0 C', '611.153']
  ]),
  ...rowsOf(
    { quantity: 'saturation vapour pressure over ice, Magnus', unit: 'Pa', tolerance: '0.001 Pa', source: S3, label: 'read-secondary' },
    [
      ['vp-magnus-i-40', 't=-40 C', '12.850'],
      ['vp-magnus-i-30', 't=-30 C', '38.025'],
      ['vp-magnus-i-25', 't=-25 C', '63.297'],
      ['vp-magnus-i-20', 't=-20 C', '103.261'],
      ['vp-magnus-i-10', 't=-10 C', '259.874'],
      ['vp-magnus-i0', 't=0 C', '611.200']
    ]
  ),
  ...rowsOf(
    { quantity: 'saturation vapour pressure over water, Magnus', unit: 'Pa', tolerance: '0.001 Pa', source: S3, label: 'read-secondary' },
    [
      ['vp-magnus-w-40', 't=-40 C', '19.021'],
      ['vp-magnus-w-30', 't=-30 C', '51.169'],
      ['vp-magnus-w-25', 't=-25 C', '81.117'],
      ['vp-magnus-w-20', 't=-20 C', '125.965'],
      ['vp-magnus-w-10', 't=-10 C', '287.031'],
      ['vp-magnus-w0', 't=0 C', '611.200'],
      ['vp-magnus-w5', 't=5 C', '871.743'],
      ['vp-magnus-w10', 't=10 C', '1226.030'],
      ['vp-magnus-w20', 't=20 C', '2332.596'],
      ['vp-magnus-w25', 't=25 C', '3160.057'],
      ['vp-magnus-w30', 't=30 C', '4233.724'],
      ['vp-magnus-w40', 't=40 C', '7367.458'],
      ['vp-magnus-w45', 't=45 C', '9579.710'],
      ['vp-magnus-w50', 't=50 C', '12345.158'],
      ['vp-magnus-w60', 't=60 C', '19993.287']
    ]
  ),
  ...rowsOf(
    {
      quantity: 'saturation vapour pressure over water, Buck 1996',
      unit: 'Pa',
      tolerance: '0.001 Pa',
      source: S4,
      label: 'read-secondary'
    },
    [
      ['vp-buck96-w-20', 't=-20 C', '125.584'],
      ['vp-buck96-w0', 't=0 C', '611.210'],
      ['vp-buck96-w20', 't=20 C', '2338.340'],
      ['vp-buck96-w40', 't=40 C', '7382.360']
    ]
  ),
  ...rowsOf(
    {
      quantity: 'saturation vapour pressure over water, Buck 1981',
      unit: 'Pa',
      tolerance: '0.001 Pa',
      source: S5,
      label: 'read-secondary'
    },
    [
      ['vp-buck81-w-20', 't=-20 C', '125.378'],
      ['vp-buck81-w0', 't=0 C', '611.210'],
      ['vp-buck81-w20', 't=20 C', '2337.282'],
      ['vp-buck81-w40', 't=40 C', '7384.175']
    ]
  ),
  ...rowsOf({ quantity: 'saturation vapour pressure over water', unit: 'Pa', tolerance: '0.1 %', source: S1, label: 'read-secondary' }, [
    ['vp-mk-w0', 't=0 C', '611.213']
  ]),
  ...rowsOf({ quantity: 'saturation vapour pressure over water', unit: 'Pa', tolerance: '0.05 %', source: S6, label: 'read-secondary' }, [
    ['vp-iapws-w5', 't=5 C', '872.575'],
    ['vp-iapws-w10', 't=10 C', '1228.199'],
    ['vp-iapws-w20', 't=20 C', '2339.318'],
    ['vp-iapws-w25', 't=25 C', '3169.929'],
    ['vp-iapws-w30', 't=30 C', '4246.971'],
    ['vp-iapws-w40', 't=40 C', '7384.938'],
    ['vp-iapws-w45', 't=45 C', '9594.999'],
    ['vp-iapws-w50', 't=50 C', '12351.946'],
    ['vp-iapws-w60', 't=60 C', '19946.434']
  ]),
  ...rowsOf({ quantity: 'saturation vapour pressure over water', unit: 'hPa', tolerance: 'last digit', source: S7, label: 'memory' }, [
    ['vp-smt-w-40', 't=-40 C', '0.1891'],
    ['vp-smt-w-20', 't=-20 C', '1.254'],
    ['vp-smt-w0', 't=0 C', '6.1078'],
    ['vp-smt-w10', 't=10 C', '12.272'],
    ['vp-smt-w20', 't=20 C', '23.373'],
    ['vp-smt-w40', 't=40 C', '73.777'],
    ['vp-smt-w60', 't=60 C', '199.26']
  ]),
  ...rowsOf({ quantity: 'saturation vapour pressure over ice', unit: 'hPa', tolerance: 'last digit', source: S7, label: 'memory' }, [
    ['vp-smt-i-40', 't=-40 C', '0.1283'],
    ['vp-smt-i-20', 't=-20 C', '1.032'],
    ['vp-smt-i0', 't=0 C', '6.1071']
  ]),
  ...rowsOf(
    {
      quantity: 'saturation vapour pressure (ice below 0 C; water above)',
      unit: 'Pa',
      tolerance: '0.03 %',
      source: S8,
      label: 'read-secondary'
    },
    [
      ['vp-ashrae-20', 't=-20 C', '103.24'],
      ['vp-ashrae5', 't=5 C', '872.6'],
      ['vp-ashrae50', 't=50 C', '12351.3']
    ]
  ),
  ...rowsOf({ quantity: 'saturation vapour pressure over ice', unit: 'mmHg', tolerance: '0.3 %', source: S9, label: 'read-secondary' }, [
    ['vp-mmhg-i-30', 't=-30 C', '0.2859'],
    ['vp-mmhg-i-20', 't=-20 C', '0.776'],
    ['vp-mmhg-i-5', 't=-5 C', '3.013'],
    ['vp-mmhg-i0', 't=0 C', '4.579']
  ]),
  ...rowsOf({ quantity: 'saturation pressure of water', unit: 'MPa', tolerance: '1e-8 rel', source: S10, label: 'read-secondary' }, [
    ['vp-if97-300K', 'T=300 K', '0.00353658941']
  ]),
  ...rowsOf({ quantity: 'sublimation pressure of ice', unit: 'MPa', tolerance: 'last digit', source: S11, label: 'read-secondary' }, [
    ['vp-r14-230K', 'T=230 K', '8.94735e-6']
  ]),
  ...rowsOf({ quantity: 'vapour pressure at triple point', unit: 'Pa', tolerance: '0.001', source: S12, label: 'read-secondary' }, [
    ['vp-tp', 'T=273.16 K', '611.657']
  ])
]

export const DEW_FROST: readonly ThermalRow[] = [
  ...rowsOf({ quantity: 'vapour pressure', unit: 'Pa', tolerance: '0.05 %', source: S6, label: 'read-secondary' }, [
    ['e-25-80', 't=25 C; RH=80 % (over water)', '2535.94'],
    ['e-20-50', 't=20 C; RH=50 % (over water)', '1169.66'],
    ['e-30-60', 't=30 C; RH=60 % (over water)', '2548.18'],
    ['e-10-70', 't=10 C; RH=70 % (over water)', '859.74'],
    ['e-22-35', 't=22 C; RH=35 % (over water)', '925.87'],
    ['e-12-40', 't=12 C; RH=40 % (over water)', '561.14'],
    ['e-2-60', 't=2 C; RH=60 % (over water)', '423.59'],
    ['e-28-90', 't=28 C; RH=90 % (over water)', '3404.75']
  ]),
  ...rowsOf({ quantity: 'dew point, Magnus', unit: 'C', tolerance: '0.001', source: S3, label: 'read-secondary' }, [
    ['dpm-25-80', 't=25 C; RH=80 % (over water)', '21.307'],
    ['dpm-20-50', 't=20 C; RH=50 % (over water)', '9.255'],
    ['dpm-30-60', 't=30 C; RH=60 % (over water)', '21.385'],
    ['dpm-10-70', 't=10 C; RH=70 % (over water)', '4.776'],
    ['dpm-22-35', 't=22 C; RH=35 % (over water)', '5.825'],
    ['dpm-12-40', 't=12 C; RH=40 % (over water)', '-1.201'],
    ['dpm-2-60', 't=2 C; RH=60 % (over water)', '-4.961'],
    ['dpm-28-90', 't=28 C; RH=90 % (over water)', '26.204']
  ]),
  ...rowsOf({ quantity: 'dew point', unit: 'C', tolerance: '0.02', source: S13, label: 'read-secondary' }, [
    ['dp-25-80', 't=25 C; RH=80 % (over water)', '21.309'],
    ['dp-20-50', 't=20 C; RH=50 % (over water)', '9.273'],
    ['dp-30-60', 't=30 C; RH=60 % (over water)', '21.387'],
    ['dp-10-70', 't=10 C; RH=70 % (over water)', '4.788'],
    ['dp-22-35', 't=22 C; RH=35 % (over water)', '5.853'],
    ['dp-12-40', 't=12 C; RH=40 % (over water)', '-1.170'],
    ['dp-2-60', 't=2 C; RH=60 % (over water)', '-4.943'],
    ['dp-28-90', 't=28 C; RH=90 % (over water)', '26.204']
  ]),
  ...rowsOf(
    {
      quantity: 'dew point (frost point if below 0 C), moist air at 101325 Pa',
      unit: 'C',
      tolerance: '0.02',
      source: S14,
      label: 'read-secondary'
    },
    [
      ['dpc-25-80', 't=25 C; RH=80 % (over water)', '21.311'],
      ['dpc-20-50', 't=20 C; RH=50 % (over water)', '9.274'],
      ['dpc-30-60', 't=30 C; RH=60 % (over water)', '21.391'],
      ['dpc-10-70', 't=10 C; RH=70 % (over water)', '4.788'],
      ['dpc-22-35', 't=22 C; RH=35 % (over water)', '5.854'],
      ['dpc-12-40', 't=12 C; RH=40 % (over water)', '-1.034'],
      ['dpc-2-60', 't=2 C; RH=60 % (over water)', '-4.381'],
      ['dpc-28-90', 't=28 C; RH=90 % (over water)', '26.205']
    ]
  ),
  ...rowsOf({ quantity: 'frost point', unit: 'C', tolerance: '0.02', source: S13, label: 'read-secondary' }, [
    ['fp-12-40', 't=12 C; RH=40 % (over water)', '-1.032'],
    ['fp-2-60', 't=2 C; RH=60 % (over water)', '-4.379']
  ]),
  ...rowsOf({ quantity: 'frost point, Magnus', unit: 'C', tolerance: '0.001', source: S3, label: 'read-secondary' }, [
    ['fpm-12-40', 't=12 C; RH=40 % (over water)', '-1.058'],
    ['fpm-2-60', 't=2 C; RH=60 % (over water)', '-4.384']
  ]),
  ...rowsOf({ quantity: 'dew point as psychrolib answers it', unit: 'C', tolerance: '0.001', source: S15, label: 'read-secondary' }, [
    ['dpp-25-80', 't=25 C; RH=80 % (over ice when t<=0)', '21.3094'],
    ['dpp-20-50', 't=20 C; RH=50 % (over ice when t<=0)', '9.2724'],
    ['dpp-10-70', 't=10 C; RH=70 % (over ice when t<=0)', '4.7868'],
    ['dpp-0-80', 't=0 C; RH=80 % (over ice when t<=0)', '-2.6829'],
    ['dpp--10-80', 't=-10 C; RH=80 % (over ice when t<=0)', '-12.4896']
  ]),
  ...rowsOf({ quantity: 'wet bulb temperature at 101325 Pa', unit: 'C', tolerance: '0.01', source: S16, label: 'read-secondary' }, [
    ['wb-25-80', 't=25 C; RH=80 %', '22.3803'],
    ['wb-10-70', 't=10 C; RH=70 %', '7.3988']
  ]),
  ...rowsOf({ quantity: 'saturation humidity ratio', unit: 'kg/kg', tolerance: '1 %', source: S17, label: 'read-secondary' }, [
    ['ws-0', 't=25 C; p=101325 Pa', '0.020173'],
    ['ws-1', 't=5 C; p=101325 Pa', '0.005425'],
    ['ws-3', 't=50 C; p=101325 Pa', '0.086863']
  ]),
  ...rowsOf({ quantity: 'humidity ratio', unit: 'kg/kg', tolerance: '0.0001', source: S18, label: 'read-secondary' }, [
    ['ash-ex1-W', 't=40 C; wet bulb=20 C; p=101325 Pa', '0.0065']
  ]),
  ...rowsOf({ quantity: 'dew point', unit: 'C', tolerance: '0.5', source: S18, label: 'read-secondary' }, [
    ['ash-ex1-Td', 't=40 C; wet bulb=20 C; p=101325 Pa', '7']
  ])
]

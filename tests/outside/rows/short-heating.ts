import type { ElectricalRow } from './electrical-row.ts'

export const SHORT_HEATING_ROWS: readonly ElectricalRow[] = [
  {
    id: 'thermal-001',
    quantity: 'k in S=sqrt(I2 t)/k',
    item: 'copper, PVC 70 °C',
    condition: '70 -> 160 °C',
    value: 115,
    unit: 'A·s^0.5/mm2',
    source: 'IEC 60364-5-54 / 4-43 (also BS 7671)',
    label: 'memory'
  },
  {
    id: 'thermal-002',
    quantity: 'k in S=sqrt(I2 t)/k',
    item: 'copper, PVC 70 °C over 300 mm2',
    condition: '70 -> 140 °C',
    value: 103,
    unit: 'A·s^0.5/mm2',
    source: 'IEC 60364-5-54 / 4-43 (also BS 7671)',
    label: 'memory'
  },
  {
    id: 'thermal-004',
    quantity: 'k in S=sqrt(I2 t)/k',
    item: 'copper, XLPE/EPR 90 °C',
    condition: '90 -> 250 °C',
    value: 143,
    unit: 'A·s^0.5/mm2',
    source: 'IEC 60364-5-54 / 4-43 (also BS 7671)',
    label: 'memory'
  },
  {
    id: 'thermal-008',
    quantity: 'k in S=sqrt(I2 t)/k',
    item: 'aluminium, PVC 70 °C',
    condition: '70 -> 160 °C',
    value: 76,
    unit: 'A·s^0.5/mm2',
    source: 'IEC 60364-5-54 / 4-43 (also BS 7671)',
    label: 'memory'
  },
  {
    id: 'thermal-010',
    quantity: 'k in S=sqrt(I2 t)/k',
    item: 'steel, PVC 70 °C',
    condition: '70 -> 160 °C',
    value: 42,
    unit: 'A·s^0.5/mm2',
    source: 'IEC 60364-5-54 / 4-43 (also BS 7671)',
    label: 'memory'
  },
  {
    id: 'thermal-011',
    quantity: 'k',
    item: 'copper',
    condition: '',
    value: '226*sqrt(ln((234.5+tf)/(234.5+ti)))',
    unit: 'A·s^0.5/mm2',
    source: 'IEC 60364-5-54 annex A',
    label: 'read-secondary'
  },
  {
    id: 'thermal-012',
    quantity: 'B',
    item: 'copper',
    condition: '',
    value: 234.5,
    unit: 'degC',
    source: 'IEC 60364-5-54 annex A / IEC 60949',
    label: 'read-secondary'
  },
  {
    id: 'thermal-013',
    quantity: 'Qc',
    item: 'copper',
    condition: '20 °C',
    value: 0.00345,
    unit: 'J/(K·mm3)',
    source: 'IEC 60364-5-54 annex A',
    label: 'read-secondary'
  },
  {
    id: 'thermal-014',
    quantity: 'rho20',
    item: 'copper',
    condition: '',
    value: 1.7241e-5,
    unit: 'ohm·mm',
    source: 'IEC 60364-5-54 annex A',
    label: 'read-secondary'
  },
  {
    id: 'thermal-015',
    quantity: 'B',
    item: 'aluminium',
    condition: '',
    value: 228,
    unit: 'degC',
    source: 'IEC 60364-5-54 annex A / IEC 60949',
    label: 'read-secondary'
  },
  {
    id: 'thermal-016',
    quantity: 'Qc',
    item: 'aluminium',
    condition: '20 °C',
    value: 0.0025,
    unit: 'J/(K·mm3)',
    source: 'IEC 60364-5-54 annex A',
    label: 'read-secondary'
  },
  {
    id: 'thermal-017',
    quantity: 'rho20',
    item: 'aluminium',
    condition: '',
    value: 2.8264e-5,
    unit: 'ohm·mm',
    source: 'IEC 60364-5-54 annex A',
    label: 'read-secondary'
  },
  {
    id: 'thermal-024',
    quantity: 'Onderdonk',
    item: 'copper',
    condition: '',
    value: '33*(I/A)^2*t = log10(1+(Tm-Ta)/(234+Ta)), A in circ mil',
    unit: '',
    source: 'Onderdonk as commonly printed',
    label: 'read-secondary'
  },
  {
    id: 'thermal-025',
    quantity: 'Onderdonk fusing current',
    item: 'AWG 16 (2581 circ mil)',
    condition: '5 s, Ta 25, Tm 1083',
    value: 168.9,
    unit: 'A',
    source: 'computed here from the formula',
    label: 'read-secondary'
  },
  {
    id: 'thermal-027',
    quantity: 'Preece diameter that fuses (long time)',
    item: 'copper, a=10244',
    condition: '5 A',
    value: 0.0062,
    unit: 'in',
    source: 'an engineering data page on fuse wires',
    label: 'read-secondary'
  },
  {
    id: 'thermal-028',
    quantity: 'Preece diameter that fuses (long time)',
    item: 'copper, a=10244',
    condition: '10 A',
    value: 0.0098,
    unit: 'in',
    source: 'an engineering data page on fuse wires',
    label: 'read-secondary'
  },
  {
    id: 'thermal-031',
    quantity: 'Preece diameter that fuses (long time)',
    item: 'copper, a=10244',
    condition: '30 A',
    value: 0.0205,
    unit: 'in',
    source: 'an engineering data page on fuse wires',
    label: 'read-secondary'
  },
  {
    id: 'thermal-032',
    quantity: 'Preece diameter that fuses (long time)',
    item: 'copper, a=10244',
    condition: '40 A',
    value: 0.0248,
    unit: 'in',
    source: 'an engineering data page on fuse wires',
    label: 'read-secondary'
  },
  {
    id: 'thermal-034',
    quantity: 'Preece diameter that fuses (long time)',
    item: 'copper, a=10244',
    condition: '60 A',
    value: 0.0325,
    unit: 'in',
    source: 'an engineering data page on fuse wires',
    label: 'read-secondary'
  },
  {
    id: 'thermal-036',
    quantity: 'Preece diameter that fuses (long time)',
    item: 'copper, a=10244',
    condition: '100 A',
    value: 0.0457,
    unit: 'in',
    source: 'an engineering data page on fuse wires',
    label: 'read-secondary'
  },
  {
    id: 'thermal-038',
    quantity: 'Preece coefficient',
    item: 'copper',
    condition: 'd in inch',
    value: 10244,
    unit: 'A/in^1.5',
    source: 'an engineering data page on fuse wires',
    label: 'read-secondary'
  },
  {
    id: 'thermal-039',
    quantity: 'Preece coefficient',
    item: 'aluminium',
    condition: 'd in inch',
    value: 7585,
    unit: 'A/in^1.5',
    source: 'an engineering data page on fuse wires',
    label: 'read-secondary'
  },
  {
    id: 'thermal-042',
    quantity: 'Preece current',
    item: 'copper 0.0524 in',
    condition: '',
    value: 123,
    unit: 'A',
    source: 'a web post',
    label: 'read-secondary'
  }
]

// Constants of a tap maker for cutting torque.
export const TAPPING_ROWS = [
  {
    item: 'kc_N_per_mm2',
    key: 'Ck15 steel 141 HB',
    value: 3600,
    source: "a tap maker's catalogue (technical section)",
    label: 'read-secondary'
  },
  {
    item: 'kc_N_per_mm2',
    key: 'Ck45 steel 188 HB',
    value: 3900,
    source: "a tap maker's catalogue (technical section)",
    label: 'read-secondary'
  },
  {
    item: 'kc_N_per_mm2',
    key: 'C105W2 175 HB',
    value: 5300,
    source: "a tap maker's catalogue (technical section)",
    label: 'read-secondary'
  },
  {
    item: 'kc_N_per_mm2',
    key: 'X6CrNi18-10 209 HB',
    value: 4200,
    source: "a tap maker's catalogue (technical section)",
    label: 'read-secondary'
  },
  {
    item: 'kc_N_per_mm2',
    key: 'CuZn40 brass',
    value: 2300,
    source: "a tap maker's catalogue (technical section)",
    label: 'read-secondary'
  },
  {
    item: 'kc_N_per_mm2',
    key: 'G-AlSi8Cu3 cast aluminium',
    value: 1300,
    source: "a tap maker's catalogue (technical section)",
    label: 'read-secondary'
  },
  {
    item: 'kc_N_per_mm2',
    key: 'GG-25 grey iron 193 HB',
    value: 2900,
    source: "a tap maker's catalogue (technical section)",
    label: 'read-secondary'
  },
  {
    item: 'K_tap',
    key: 'straight flute, plug (5 pitches): steel coarse',
    value: 1.35,
    source: "a tap maker's catalogue (technical section)",
    label: 'read-secondary'
  },
  {
    item: 'K_tap',
    key: 'straight flute, plug: steel fine',
    value: 1.15,
    source: "a tap maker's catalogue (technical section)",
    label: 'read-secondary'
  },
  {
    item: 'K_tap',
    key: 'straight flute, plug: cast iron and aluminium coarse',
    value: 1.25,
    source: "a tap maker's catalogue (technical section)",
    label: 'read-secondary'
  },
  {
    item: 'K_tap',
    key: 'straight flute, plug: cast iron and aluminium fine',
    value: 1.08,
    source: "a tap maker's catalogue (technical section)",
    label: 'read-secondary'
  },
  {
    item: 'K_tap',
    key: 'straight flute, bottoming (1.5 pitches): steel coarse',
    value: 1.43,
    source: "a tap maker's catalogue (technical section)",
    label: 'read-secondary'
  },
  {
    item: 'K_tap',
    key: 'straight flute, bottoming: steel fine',
    value: 1.5,
    source: "a tap maker's catalogue (technical section)",
    label: 'read-secondary'
  },
  {
    item: 'K_tap',
    key: 'straight flute, bottoming: cast iron and aluminium coarse',
    value: 1.3,
    source: "a tap maker's catalogue (technical section)",
    label: 'read-secondary'
  },
  {
    item: 'K_tap',
    key: 'straight flute, bottoming: cast iron and aluminium fine',
    value: 1.25,
    source: "a tap maker's catalogue (technical section)",
    label: 'read-secondary'
  },
  {
    item: 'K_tap',
    key: 'spiral flute: cast iron and aluminium coarse',
    value: 1.05,
    source: "a tap maker's catalogue (technical section)",
    label: 'read-secondary'
  },
  {
    item: 'K_tap',
    key: 'spiral flute: cast iron and aluminium fine',
    value: 1.1,
    source: "a tap maker's catalogue (technical section)",
    label: 'read-secondary'
  },
  {
    item: 'K_tap',
    key: 'spiral point: cast iron and aluminium coarse',
    value: 0.8,
    source: "a tap maker's catalogue (technical section)",
    label: 'read-secondary'
  },
  {
    item: 'K_tap',
    key: 'spiral point: cast iron and aluminium fine',
    value: 1,
    source: "a tap maker's catalogue (technical section)",
    label: 'read-secondary'
  }
] as const

// Torque of oil-free cadmium-plated nuts, lbf.in.
export const DRY_NUT_ROWS = [
  {
    thread: '8-36',
    tension: '12-15',
    shear: '7-9',
    tensionLimit: 20,
    shearLimit: 12,
    source: 'FAA AC 43.13-1B (9/8/98) table 7-1, inch-pounds, oil-free cadmium plated threads',
    label: 'read-secondary'
  },
  {
    thread: '10-32',
    tension: '20-25',
    shear: '12-15',
    tensionLimit: 40,
    shearLimit: 25,
    source: 'FAA AC 43.13-1B (9/8/98) table 7-1, inch-pounds, oil-free cadmium plated threads',
    label: 'read-secondary'
  },
  {
    thread: '5/16-24',
    tension: '100-140',
    shear: '60-85',
    tensionLimit: 225,
    shearLimit: 140,
    source: 'FAA AC 43.13-1B (9/8/98) table 7-1, inch-pounds, oil-free cadmium plated threads',
    label: 'read-secondary'
  },
  {
    thread: '3/8-24',
    tension: '160-190',
    shear: '95-110',
    tensionLimit: 390,
    shearLimit: 240,
    source: 'FAA AC 43.13-1B (9/8/98) table 7-1, inch-pounds, oil-free cadmium plated threads',
    label: 'read-secondary'
  },
  {
    thread: '1/2-20',
    tension: '480-690',
    shear: '290-410',
    tensionLimit: 1100,
    shearLimit: 660,
    source: 'FAA AC 43.13-1B (9/8/98) table 7-1, inch-pounds, oil-free cadmium plated threads',
    label: 'read-secondary'
  },
  {
    thread: '9/16-18',
    tension: '800-1000',
    shear: '480-600',
    tensionLimit: 1600,
    shearLimit: 960,
    source: 'FAA AC 43.13-1B (9/8/98) table 7-1, inch-pounds, oil-free cadmium plated threads',
    label: 'read-secondary'
  },
  {
    thread: '3/4-16',
    tension: '2300-2500',
    shear: '1300-1500',
    tensionLimit: 5000,
    shearLimit: 3000,
    source: 'FAA AC 43.13-1B (9/8/98) table 7-1, inch-pounds, oil-free cadmium plated threads',
    label: 'read-secondary'
  },
  {
    thread: '8-32',
    tension: '12-15',
    shear: '7-9',
    tensionLimit: 20,
    shearLimit: 12,
    source: 'FAA AC 43.13-1B (9/8/98) table 7-1, inch-pounds, oil-free cadmium plated threads',
    label: 'read-secondary'
  },
  {
    thread: '1/4-20',
    tension: '40-50',
    shear: '25-30',
    tensionLimit: 75,
    shearLimit: 45,
    source: 'FAA AC 43.13-1B (9/8/98) table 7-1, inch-pounds, oil-free cadmium plated threads',
    label: 'read-secondary'
  },
  {
    thread: '5/16-18',
    tension: '80-90',
    shear: '48-55',
    tensionLimit: 160,
    shearLimit: 100,
    source: 'FAA AC 43.13-1B (9/8/98) table 7-1, inch-pounds, oil-free cadmium plated threads',
    label: 'read-secondary'
  },
  {
    thread: '7/16-14',
    tension: '235-255',
    shear: '140-155',
    tensionLimit: 475,
    shearLimit: 280,
    source: 'FAA AC 43.13-1B (9/8/98) table 7-1, inch-pounds, oil-free cadmium plated threads',
    label: 'read-secondary'
  },
  {
    thread: '1/2-13',
    tension: '400-480',
    shear: '240-290',
    tensionLimit: 880,
    shearLimit: 520,
    source: 'FAA AC 43.13-1B (9/8/98) table 7-1, inch-pounds, oil-free cadmium plated threads',
    label: 'read-secondary'
  },
  {
    thread: '5/8-11',
    tension: '700-900',
    shear: '420-540',
    tensionLimit: 1500,
    shearLimit: 900,
    source: 'FAA AC 43.13-1B (9/8/98) table 7-1, inch-pounds, oil-free cadmium plated threads',
    label: 'read-secondary'
  },
  {
    thread: '3/4-10',
    tension: '1150-1600',
    shear: '700-950',
    tensionLimit: 2500,
    shearLimit: 1500,
    source: 'FAA AC 43.13-1B (9/8/98) table 7-1, inch-pounds, oil-free cadmium plated threads',
    label: 'read-secondary'
  }
] as const

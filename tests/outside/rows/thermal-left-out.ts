// Rows of the collected thermal figures that no check here answers, and why.
export const THERMAL_LEFT_OUT = [
  { subject: 'vapour-pressure', why: 'above 60 °C, outside the range of the Magnus form', ids: ['vp-ashrae100'] },
  { subject: 'heat-transfer', why: 'no fin is worked out here', ids: ['inc3.9-q-cu', 'inc3.9-L-cu', 'inc3.9-q-al', 'inc3.9-L-al'] },
  { subject: 'heat-transfer', why: 'the Zukauskas correlation is not in the program', ids: ['inc7.4-Zh'] },
  { subject: 'heat-transfer', why: 'no insulation is worked out here', ids: ['inc3.5'] },
  {
    subject: 'contact',
    why: 'joint in vacuum: not met in this trade',
    ids: ['rc-Al/Al vacuum-100kPa', 'rc-Al/Al vacuum-10MPa', 'rc-Cu/Cu vacuum-100kPa']
  },
  {
    subject: 'materials',
    why: 'thermal expansion belongs to the joint, not to warming',
    ids: [
      'mat-4',
      'mat-5',
      'mat-9',
      'mat-16',
      'mat-21',
      'mat-22',
      'mat-27',
      'mat-31',
      'mat-33',
      'mat-38',
      'mat-44',
      'mat-46',
      'exp-steel 1020 in 356.0',
      'exp-brass C36000 in 356.0',
      'exp-brass C36000 in steel 1020'
    ]
  },
  { subject: 'materials', why: 'wrought alloy, not in the table of materials', ids: ['mat-43'] },
  {
    subject: 'carburettor-icing',
    why: 'no icing class is given: no chart could be digitised, and a heater is not presented as icing protection',
    ids: [
      'tn1790-T-high cruise',
      'tn1790-RH-high cruise',
      'tn1790-T-low cruise',
      'tn1790-RH-low cruise',
      'tn1790-T-glide',
      'tn1790-RH-glide',
      'tn1790-vis-g',
      'tn1790-plate',
      'tn1790-65F',
      'tn55',
      'ssl14',
      'doi-drop',
      'doi-hot',
      'doi-rare',
      'faa-likely',
      'faa-hot',
      'chart-22-5',
      'chart-fm'
    ]
  },
  { subject: 'carburettor-icing', why: 'rule of thumb without the heat of the vapour', ids: ['gas-lv-air'] },
  { subject: 'carburettor-icing', why: 'latent heat by density is not worked out: it is entered', ids: ['nbs97-0.72-60', 'nbs97-0.75-32'] },
  {
    subject: 'practice',
    why: 'wiring practice, not heat',
    ids: [
      'pr-0',
      'pr-1',
      'pr-2',
      'pr-3',
      'pr-4',
      'pr-7',
      'pr-8',
      'pr-12',
      'pr-14',
      'pr-15',
      'pr-16',
      'pr-17',
      'pr-18',
      'pr-19',
      'pr-20',
      'pr-21'
    ]
  },
  {
    subject: 'uncertainty',
    why: 'tolerance stacks and uncertainty belong to the bounds, not to heat',
    ids: ['gum-d', 'gum-uc', 'st-nom', 'st-wc', 'st-rss']
  }
] as const

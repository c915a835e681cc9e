// Nut factors: one figure, or a range.
export const NUT_FACTOR_ROWS = [
  {
    threads: 'non-plated, black finish',
    nutFactor: 0.3,
    least: null,
    greatest: null,
    source:
      "Budynas & Nisbett, Shigley's Mechanical Engineering Design 9th ed. table 8-15 (page text seen in a university digital library)",
    label: 'read'
  },
  {
    threads: 'zinc plated',
    nutFactor: 0.2,
    least: null,
    greatest: null,
    source:
      "Budynas & Nisbett, Shigley's Mechanical Engineering Design 9th ed. table 8-15 (page text seen in a university digital library)",
    label: 'read'
  },
  {
    threads: 'lubricated',
    nutFactor: 0.18,
    least: null,
    greatest: null,
    source:
      "Budynas & Nisbett, Shigley's Mechanical Engineering Design 9th ed. table 8-15 (page text seen in a university digital library)",
    label: 'read'
  },
  {
    threads: 'cadmium plated',
    nutFactor: 0.16,
    least: null,
    greatest: null,
    source:
      "Budynas & Nisbett, Shigley's Mechanical Engineering Design 9th ed. table 8-15 (page text seen in a university digital library)",
    label: 'read'
  },
  {
    threads: 'with anti-seize compound (a named brand)',
    nutFactor: 0.12,
    least: null,
    greatest: null,
    source:
      "Budynas & Nisbett, Shigley's Mechanical Engineering Design 9th ed. table 8-15 (page text seen in a university digital library)",
    label: 'read'
  },
  {
    threads: 'with low-friction nuts (a named brand)',
    nutFactor: 0.09,
    least: null,
    greatest: null,
    source:
      "Budynas & Nisbett, Shigley's Mechanical Engineering Design 9th ed. table 8-15 (page text seen in a university digital library)",
    label: 'read'
  },
  {
    threads: 'dry steel on dry steel',
    nutFactor: null,
    least: 0.18,
    greatest: 0.27,
    source: 'fastener vendor engineering note (range)',
    label: 'read-secondary'
  },
  {
    threads: 'machine oil on steel',
    nutFactor: null,
    least: 0.1,
    greatest: 0.26,
    source: 'fastener vendor engineering note (range)',
    label: 'read-secondary'
  },
  {
    threads: 'cadmium on steel',
    nutFactor: null,
    least: 0.15,
    greatest: 0.19,
    source: 'fastener vendor engineering note (range)',
    label: 'read-secondary'
  },
  {
    threads: 'phosphate and oil on steel',
    nutFactor: null,
    least: 0.15,
    greatest: 0.22,
    source: 'fastener vendor engineering note (range)',
    label: 'read-secondary'
  },
  {
    threads: 'zinc on steel',
    nutFactor: null,
    least: 0.17,
    greatest: 0.35,
    source: 'fastener vendor engineering note (range)',
    label: 'read-secondary'
  },
  {
    threads: 'stainless on stainless, dry',
    nutFactor: null,
    least: 0.3,
    greatest: 0.5,
    source: 'fastener vendor engineering note (range)',
    label: 'read-secondary'
  },
  {
    threads: 'zinc-flake coated steel',
    nutFactor: null,
    least: 0.16,
    greatest: 0.32,
    source: 'fastener vendor engineering note (range)',
    label: 'read-secondary'
  },
  {
    threads: 'measured mean K, many lubricants',
    nutFactor: null,
    least: 0.086,
    greatest: 0.52,
    source: 'handbook chapter abstract',
    label: 'read-secondary'
  },
  {
    threads: 'common default when nothing is known',
    nutFactor: 0.2,
    least: null,
    greatest: null,
    source: 'trade rule',
    label: 'common practice'
  }
] as const

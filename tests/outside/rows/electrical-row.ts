/** One published figure, as its source gives it. A value in words is a rule to be tested by hand. */
export interface ElectricalRow {
  readonly id: string
  readonly quantity: string
  readonly item: string
  readonly condition: string
  readonly value: number | string
  readonly unit: string
  readonly source: string
  readonly label: 'read' | 'read-secondary' | 'memory' | 'common practice'
}

/** Where a check value was seen, and how. */
export interface Cited {
  readonly source: string
  readonly label: 'read' | 'read-secondary' | 'memory' | 'common practice'
}

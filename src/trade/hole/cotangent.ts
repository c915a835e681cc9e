/** Length of a cone over its radius, from half its angle. */
export function cotDeg(angleDeg: number): number {
  return 1 / Math.tan((angleDeg * Math.PI) / 180)
}

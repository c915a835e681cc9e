/** `7 h 17 min`, `12 min`, `45 s`: a time for a sentence, rounded down. */
export function showTime(timeS: number): string {
  if (timeS < 60) return `${Number(timeS.toPrecision(2))} s`
  const minutes = Math.floor(timeS / 60)
  if (minutes < 60) return `${minutes} min`
  return minutes % 60 === 0 ? `${minutes / 60} h` : `${Math.floor(minutes / 60)} h ${minutes % 60} min`
}

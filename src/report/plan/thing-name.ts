const NAMES: { readonly [room: string]: string } = { holes: 'hole', parts: 'part' }

/** `hole left` for `holes.left`, `circuit, left` for `circuit.left`. */
export function thingName(thing: string): string {
  const at = thing.indexOf('.')
  if (at < 0) return thing
  const [room, name] = [thing.slice(0, at), thing.slice(at + 1)]
  return NAMES[room] === undefined ? `${room}, ${name}` : `${NAMES[room]} ${name}`
}

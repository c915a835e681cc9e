// Runs in the page: what somebody who looks at it would find wrong, as a list of sentences.
;(() => {
  const flaws = []
  const width = document.documentElement.clientWidth
  const shown = element => element.getClientRects().length > 0 && element.closest('.unseen, thead') === null
  const near = text => JSON.stringify(text.trim().slice(0, 40))

  if (document.documentElement.scrollWidth > width) flaws.push(`wider than the page: ${document.documentElement.scrollWidth} of ${width}`)

  /** Every piece of text with the boxes of its lines. */
  const pieces = []
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
  for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
    const parent = node.parentElement
    if (node.data.trim() === '' || parent.closest('style, title, desc') !== null || !shown(parent)) continue
    const range = document.createRange()
    range.selectNodeContents(node)
    for (const box of range.getClientRects()) pieces.push({ text: node.data, parent, box })
  }

  for (const { text, box } of pieces) {
    if (box.left < -0.5 || box.right > width + 0.5) flaws.push(`cut off at the edge: ${near(text)}`)
  }

  for (const element of document.body.querySelectorAll('h1, h2, h3, p, li, dt, dd, td, th, caption, figcaption, a')) {
    if (shown(element) && element.scrollWidth > element.clientWidth + 1 && element.clientWidth > 0)
      flaws.push(`text runs out of its box: ${near(element.textContent)}`)
  }

  for (const svg of document.querySelectorAll('svg')) {
    const frame = svg.getBoundingClientRect()
    if (frame.width < 200 || frame.height < 100) flaws.push(`drawing without a size: ${near(svg.textContent)}`)
    for (const text of svg.querySelectorAll('text')) {
      const box = text.getBoundingClientRect()
      if (box.left < frame.left - 1 || box.right > frame.right + 1 || box.top < frame.top - 1 || box.bottom > frame.bottom + 1)
        flaws.push(`outside its drawing: ${near(text.textContent)}`)
    }
  }

  const sorted = pieces.toSorted((a, b) => a.box.top - b.box.top)
  for (const [i, one] of sorted.entries()) {
    for (const other of sorted.slice(i + 1)) {
      if (other.box.top >= one.box.bottom - 3) break
      const across = Math.min(one.box.right, other.box.right) - Math.max(one.box.left, other.box.left)
      const down = Math.min(one.box.bottom, other.box.bottom) - Math.max(one.box.top, other.box.top)
      if (one.parent !== other.parent && across > 1 && down > 3)
        flaws.push(`on top of each other: ${near(one.text)} and ${near(other.text)}`)
    }
  }

  /** WCAG 2: relative luminance, and the ratio of two. */
  const channels = colour => colour.match(/[\d.]+/g).map(Number)
  const linear = part => (part / 255 <= 0.04045 ? part / 255 / 12.92 : ((part / 255 + 0.055) / 1.055) ** 2.4)
  const luminance = ([r, g, b]) => 0.2126 * linear(r) + 0.7152 * linear(g) + 0.0722 * linear(b)
  const ground = element => {
    for (let one = element; one !== null; one = one.parentElement) {
      const colour = channels(getComputedStyle(one).backgroundColor)
      if (colour.length === 3) return colour
    }
    return [255, 255, 255]
  }
  for (const { text, parent } of pieces) {
    const style = getComputedStyle(parent)
    const [a, b] = [channels(parent.closest('svg') === null ? style.color : style.fill), ground(parent)].map(luminance)
    const ratio = (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05)
    if (ratio < 4.5) flaws.push(`contrast ${ratio.toFixed(2)}: ${near(text)}`)
  }
  return [...new Set(flaws)]
})()

// Runs in the page: what somebody hears who does not see it.
;(() => ({
  lang: document.documentElement.lang,
  title: document.title,
  headings: [...document.querySelectorAll('h1, h2, h3, h4')].map(one => Number(one.localName[1])),
  tables: [...document.querySelectorAll('table')].map(table => ({
    caption: table.caption?.textContent ?? '',
    headless: [...table.tBodies[0].rows].filter(row => row.cells[0].localName !== 'th' || row.cells[0].scope !== 'row').length,
    columns: [...table.tHead.rows[0].cells].filter(cell => cell.localName === 'th' && cell.scope === 'col' && cell.textContent !== '')
      .length,
    cells: Math.max(...[...table.tBodies[0].rows].map(row => row.cells.length))
  })),
  drawings: [...document.querySelectorAll('svg')].map(svg => ({
    role: svg.getAttribute('role'),
    named: svg
      .getAttribute('aria-labelledby')
      .split(' ')
      .map(id => document.getElementById(id)?.textContent ?? '')
  })),
  brokenLinks: [...document.querySelectorAll('a')].filter(a => document.getElementById(a.hash.slice(1)) === null).length,
  twice: [...document.querySelectorAll('[id]')].map(one => one.id).filter((id, i, all) => all.indexOf(id) !== i),
  scripts: document.scripts.length + document.querySelectorAll('iframe, object, embed, img, link, base, form, input').length
}))()

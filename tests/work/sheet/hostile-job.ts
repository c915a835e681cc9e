import { jobText } from '../invented-job.ts'

const MARKUP = '<script>document.title="taken"</script><img src=x onerror=alert(1)> & "quoted" </style></title>-->]]>'
const LONG = 'W'.repeat(180)
/** A bell, an escape of the terminal, a turned line, a mark that cannot be seen, a null. */
const CONTROL = 'ring\u0007 \u001b[31mred \u202eturned\u202c \u200bunseen'
const MARKDOWN = '# head | cell ` [link](http://example.invalid) **bold** <!-- '

export const HOSTILE = { MARKUP, LONG, CONTROL, MARKDOWN }

const inYaml = (text: string) => JSON.stringify(text)

/** Invented: words in every place of a job that takes them, none of them meant well. The reader takes no control characters. */
export function hostileJob(): string {
  return jobText({
    title: `${MARKUP} ${LONG}`,
    behind: `${MARKUP}${LONG}`,
    leakTest: `{ medium: ${inYaml(MARKUP + LONG)}, pressure: 1.5 bar }`,
    wayBack: `{ insert: ${inYaml(MARKDOWN + LONG)} }`,
    stack: `[{ what: ${inYaml(`${MARKUP} ${LONG}`)}, thickness: 1.2 mm ± 0.1 mm }]`,
    record: `{ by: ${inYaml(LONG + MARKUP)}, inspected-by: ${inYaml(MARKDOWN + LONG)}, next-inspection: ${inYaml(MARKDOWN)} }`,
    circuit: [
      '{ source: { bus: 27 V, low: 24 V, high: 28 V, ground: block }',
      `runs: [{ from: bus, to: ${inYaml(`${LONG}+`)}, wire: { size: 1.5 mm2, length: 4 m }, through: [{ what: ${inYaml(`fuse ${MARKUP}${LONG} F1`)} }, { what: ${inYaml(`switch ${MARKDOWN} F2`)} }] }, { from: ${inYaml(MARKUP)}, to: block, bond: 2 mohm }]`,
      `labels: { F1: ${inYaml(`${MARKUP} ${LONG}`)}, F2: ${inYaml(MARKDOWN + LONG)} }`,
      `loads: [{ heater: elbow, from: ${inYaml(`${LONG}+`)}, to: ${inYaml(MARKUP)} }] }`
    ].join(', ')
  })
}

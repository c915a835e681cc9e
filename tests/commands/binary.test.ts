// example: the built program as a whole process: exit codes, streams, colour, pipes
import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'

const fettle = (words: readonly string[], env: Record<string, string> = {}) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, ['bin/fettle.js', ...words], {
    encoding: 'utf8',
    env: { PATH: process.env['PATH'] ?? '', ...env }
  })
  return { status, stdout, stderr }
}
const SEAT = ['seat', '--thread', 'M12x1.5', '--thread-depth', '15 mm', '--stack', '1 mm', '--crush', '0 mm']

describe('exit codes', () => {
  it.each([
    [0, ['drill', '7/16']],
    [0, [...SEAT, '--thread-length', '15.5 mm']],
    [1, [...SEAT, '--thread-length', '16.5 mm']],
    [1, [...SEAT, '--thread-length', '15.5 mm', '--strict']],
    [1, ['drop', '--power', '500 W', '--voltage', '12 V', '--constant-power', '--wire', '0.5 mm2', '--length', '20 m']],
    [2, ['torque', '155']],
    [2, ['nonsense']],
    [2, ['hole', '--tread', 'M12']],
    [2, ['check', 'nowhere.yaml']],
    [1, ['check', 'examples/bad/too-much-drop.yaml', 'examples/gearbox-preheater.yaml']],
    [2, ['check', 'examples/bad/too-much-drop.yaml', 'nowhere.yaml']],
    [0, ['--version']],
    [0, ['--help']],
    [0, []]
  ])('%i: %s', (status, words) => {
    const result = fettle(words)
    expect(result.status).toBe(status)
    expect(`${result.stdout}${result.stderr}`).not.toMatch(/NaN|undefined|Infinity|\bat .*\.js:\d+/)
  })
})

describe('streams', () => {
  it('results on one, faults on the other, and the document of a fault on both', () => {
    const { stdout, stderr } = fettle(['torque', '1,5 N·m', '--json'])
    expect(stderr).toContain('decimal comma')
    expect(JSON.parse(stdout).errors[0]).toMatchObject({ near: '1.5 N·m', where: { file: null, path: '<torque>' } })
  })

  it('an unknown option gives the nearest, in JSON too', () => {
    expect(JSON.parse(fettle(['torque', '1 N·m', '--jsn', '--json']).stdout).errors[0].near).toBe('--json')
  })

  it('an option before the command is told where it belongs', () => {
    expect(fettle(['--json', 'thread', 'M12']).stderr).toContain('found "--json" before the command; accepted: options after it')
    expect(fettle(['--jsn']).stderr).toContain('the options that "fettle --help" lists')
  })

  it('an option that is given twice is told as that', () => {
    const { status, stderr } = fettle(['heater', '--power', '45W', '--voltage', '24V', '--power', '60W'])
    expect(status).toBe(2)
    expect(stderr).toBe('--power: error: found --power twice: "45W" and "60W"; accepted: --power once\n')
  })

  it('a reader that goes away is no fault', () => {
    const { status, stderr } = spawnSync('sh', ['-c', `"${process.execPath}" bin/fettle.js thread M12 | head -c 5`], { encoding: 'utf8' })
    expect(status).toBe(0)
    expect(stderr).toBe('')
  })

  it('control characters of the words never reach the terminal', () => {
    expect(fettle(['torque', '\u001b[31m1 N·m']).stderr).not.toContain('\u001b')
  })
})

describe('colour', () => {
  const coloured = (env: Record<string, string>, more: readonly string[] = []) =>
    fettle([...SEAT, '--thread-length', '15.5 mm', ...more], env).stdout.includes('\u001b[')
  it('is off in a pipe, on when forced, off when asked for', () => {
    expect(coloured({})).toBe(false)
    expect(coloured({ FORCE_COLOR: '1' })).toBe(true)
    expect(coloured({ FORCE_COLOR: '0' })).toBe(false)
    expect(coloured({ FORCE_COLOR: '1' }, ['--no-color'])).toBe(false)
  })
})

describe('width', () => {
  it.each([60, 80, 100, 160])('no line is wider than %i columns', columns => {
    for (const words of [
      ['thread', 'M12x1.5'],
      ['drill', '7/16'],
      [...SEAT, '--thread-length', '15.5 ± 0.1 mm'],
      ['check', 'examples/gearbox-preheater.yaml']
    ]) {
      const widest = Math.max(
        ...fettle(words, { COLUMNS: String(columns) })
          .stdout.split('\n')
          .map(line => [...line].length)
      )
      expect(widest).toBeLessThanOrEqual(columns)
    }
  })
})

describe('new', () => {
  const folder = mkdtempSync(join(tmpdir(), 'fettle-new-'))
  const file = join(folder, 'mine.yaml')

  it.each(['heater', 'sensor', 'plug'])('a starter of kind %s is read without a fault', kind => {
    writeFileSync(join(folder, `${kind}.yaml`), fettle(['new', kind]).stdout)
    expect(fettle(['check', join(folder, `${kind}.yaml`)]).status).toBe(0)
  })

  it('writes a file, and not over another unless told to', () => {
    expect(fettle(['new', 'plug', '--output', file]).status).toBe(0)
    writeFileSync(file, 'mine')
    expect(fettle(['new', 'plug', '--output', file])).toMatchObject({ status: 2 })
    expect(readFileSync(file, 'utf8')).toBe('mine')
    expect(fettle(['new', 'plug', '-o', file, '--force']).status).toBe(0)
    expect(readFileSync(file, 'utf8')).toContain('fettle: 1')
  })

  it('leaves nothing where it cannot write', () => {
    const nowhere = join(folder, 'no', 'such', 'folder.yaml')
    expect(fettle(['new', '--output', nowhere]).status).toBe(2)
    expect(existsSync(nowhere)).toBe(false)
  })
})

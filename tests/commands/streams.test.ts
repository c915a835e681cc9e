// example: the built program where the system fails it: a full disk, a folder or a link as output
import { spawnSync } from 'node:child_process'
import { existsSync, lstatSync, mkdtempSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'

const shell = (line: string) =>
  spawnSync('sh', ['-c', line.replaceAll('fettle', `"${process.execPath}" bin/fettle.js`)], { encoding: 'utf8' })

describe.skipIf(!existsSync('/dev/full'))('a full disk', () => {
  it.each(['thread M12', 'thread M12 --json', '--version', 'schema', 'check examples/bad'])(
    'under the results of %s ends with 2',
    words => {
      const { status, stderr } = shell(`fettle ${words} >/dev/full`)
      expect(status).toBe(2)
      expect(stderr).toContain('no space left on device')
      expect(stderr).not.toMatch(/\bat .*\.js:\d+/)
    }
  )

  it('under the faults leaves the exit code as it is', () => {
    expect(shell('fettle thread nonsense 2>/dev/full').status).toBe(2)
    expect(shell('fettle thread M12 2>/dev/full').status).toBe(0)
  })
})

describe('a file to write', () => {
  const folder = mkdtempSync(join(tmpdir(), 'fettle-streams-'))
  const written = (name: string) =>
    spawnSync(process.execPath, ['bin/fettle.js', 'new', '-o', join(folder, name), '--force'], { encoding: 'utf8' })

  it('is no folder and no device', () => {
    expect(written('.')).toMatchObject({ status: 2, stderr: expect.stringContaining('a folder, a device') })
    expect(shell('fettle new -o /dev/null --force').status).toBe(2)
    expect(lstatSync('/dev/null').isCharacterDevice()).toBe(true)
  })

  it('stays a link where it is one', () => {
    writeFileSync(join(folder, 'job.yaml'), 'old')
    symlinkSync('job.yaml', join(folder, 'link.yaml'))
    expect(written('link.yaml').status).toBe(0)
    expect(lstatSync(join(folder, 'link.yaml')).isSymbolicLink()).toBe(true)
    expect(readFileSync(join(folder, 'job.yaml'), 'utf8')).toContain('fettle: 1')
  })

  it.each([
    ['circle.yaml', 'a broken link'],
    [`${'x'.repeat(300)}.yaml`, 'a name too long']
  ])('%s is told in words', (name, says) => {
    if (name.startsWith('circle')) symlinkSync(name, join(folder, name))
    expect(written(name)).toMatchObject({ status: 2, stderr: expect.stringContaining(says) })
    expect(readdirSync(folder).filter(file => file.endsWith('.part'))).toEqual([])
  })
})

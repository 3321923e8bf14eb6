import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { folderForTest, problem, quietEar } from './run-for-tests.ts'

it('takes a paper in by its hash, carries it through export and import, and misses it when it is not beside the file', () => {
  const folder = folderForTest()
  const demo = join(folder, 'demo.jsonl')
  const data = (name: string) => ['--data', join(folder, name)]
  quietEar(['demo', '--out', demo])
  quietEar(['import', demo, ...data('first')])
  const paper = join(folder, 'letter.txt')
  writeFileSync(paper, 'Dear colleague')
  const { hash } = quietEar(['attach', paper, ...data('first')]).json() as { hash: string }
  const out = join(folder, 'out.jsonl')
  expect(quietEar(['export', ...data('first'), '--out', out]).err).toContain('1 attachment.')
  expect(readdirSync(`${out}.files`)).toEqual([hash])
  expect(quietEar(['import', out, ...data('second')]).status).toBe(0)
  const again = join(folder, 'again.jsonl')
  quietEar(['export', ...data('second'), '--out', again])
  expect(readFileSync(again, 'utf8')).toBe(readFileSync(out, 'utf8'))
  writeFileSync(join(`${out}.files`, hash), 'Dear enemy')
  expect(problem(quietEar(['import', out, ...data('third')])).code).toBe('attachment-changed')
})

it('refuses a kind of file it cannot clean, and one that is not what its name says', () => {
  const folder = folderForTest()
  const demo = join(folder, 'demo.jsonl')
  const data = ['--data', join(folder, 'data')]
  quietEar(['demo', '--out', demo])
  quietEar(['import', demo, ...data])
  for (const [name, code] of [
    ['scan.heic', 'unknown-kind'],
    ['photo.jpg', 'not-what-it-says'],
  ] as const) {
    writeFileSync(join(folder, name), 'not a picture')
    const ran = quietEar(['attach', join(folder, name), ...data])
    expect([ran.status, problem(ran).code]).toEqual([2, code])
  }
})

/** Run as a program of its own, so that its memory is its own: makes so many rows as they are asked for, and counts them. */
import { antibiogram } from '#actions/antibiogram/antibiogram.ts'

const size = Number(process.argv[2])
const drugs = [
  'amikacin',
  'amoxicillin-clavulanate',
  'cefalexin',
  'chloramphenicol',
  'clindamycin',
  'doxycycline',
  'enrofloxacin',
  'gentamicin',
  'marbofloxacin',
  'oxacillin',
]
const organisms = [
  'Staphylococcus pseudintermedius',
  'Pseudomonas aeruginosa',
  'Escherichia coli',
  'Proteus mirabilis',
  'Enterococcus faecalis',
  'Streptococcus canis',
]
const values = ['<=0.25', '0.5', '1', '2', '4', '8', '16', '>32']
const sites = ['canal', 'bulla-on-entry', 'bulla-after-lavage']

/** Invented rows, the same every time: as many animals as isolates have room, five years, days in no order. */
async function* inventedRows(): AsyncGenerator<unknown> {
  let seed = 7
  const draw = (below: number) => {
    seed = (Math.imul(seed, 1_664_525) + 1_013_904_223) >>> 0
    return Math.floor((seed / 2 ** 32) * below)
  }
  for (let row = 0; row < size; ) {
    const day = new Date(Date.UTC(2021, 0, 1 + draw(1_826))).toISOString().slice(0, 10)
    const isolate = {
      animal: `A${draw(size / 20)}`,
      collectedOn: day,
      host: draw(100) < 85 ? 'dog' : 'cat',
      organism: organisms[draw(organisms.length)],
      site: sites[draw(sites.length)],
      isolate: String(row),
      purpose: 'clinical',
    }
    for (const drug of drugs) {
      if (row >= size) break
      row += 1
      yield { ...isolate, drug, mic: values[draw(values.length)] }
    }
  }
}

const began = performance.now()
const { organisms: counted, rows } = await antibiogram(inventedRows(), { sites: 'apart' })
const seconds = (performance.now() - began) / 1000
const { user, system } = process.cpuUsage()
process.stdout.write(
  JSON.stringify({
    read: rows.read,
    isolates: counted.reduce((sum, { n }) => sum + n, 0),
    seconds,
    processor: (user + system) / 1e6,
    megabytes: process.resourceUsage().maxRSS / 1024,
  }),
)

import { susceptibility } from '#content/susceptibility/index.ts'
import { isolateOf } from '#core/culture/isolates-for-tests.ts'
import { readIsolates } from '#core/culture/read-isolates.ts'
import type { StoredIsolate } from '#core/journal/kinds/specimen-result.ts'

const organisms = [
  'staphylococcus-pseudintermedius',
  'pseudomonas-aeruginosa',
  'escherichia-coli',
  'proteus-mirabilis',
].concat(['enterococcus-faecalis', 'streptococcus-canis', 'staphylococcus-aureus', 'pasteurella-multocida'])
const drugs = [
  'oxacillin',
  'cefalexin',
  'cefovecin',
  'cefpodoxime',
  'amoxicillin-clavulanate',
  'ampicillin',
  'clindamycin',
]
  .concat(['erythromycin', 'doxycycline', 'enrofloxacin', 'marbofloxacin', 'pradofloxacin', 'gentamicin', 'amikacin'])
  .concat([
    'trimethoprim-sulfonamide',
    'chloramphenicol',
    'ceftazidime',
    'imipenem',
    'piperacillin-tazobactam',
    'rifampicin',
  ])
const values = ['<=0.06', '0.12', '<=0.25', '0.38', '0.5', '1', '2', '>4', '>=8', '16', '18 mm', '25 mm', 'S', 'R']

/** Invented reports, one isolate each with every drug of the panel; the same every time. */
function inventedIsolates(size: number): StoredIsolate[] {
  return Array.from({ length: size }, (_, at) => {
    const species = organisms[at % organisms.length] ?? ''
    const printed = drugs.map((drug, place) => [drug, values[(at * 7 + place * 5) % values.length] ?? ''] as const)
    return isolateOf(species, Object.fromEntries(printed), { key: String(at) })
  })
}

/** Drug results read by one edition in a second of processor time, expert rules and stand-ins with them: the middle of nine. */
export function benchCulture(size = 1000) {
  const isolates = inventedIsolates(size)
  const read = () =>
    readIsolates({ host: 'dog', site: 'soft-tissue', edition: 'clsi-vet01s-7', isolates }, susceptibility)
  read()
  const seconds = Array.from({ length: 9 }, () => {
    const began = process.cpuUsage()
    read()
    const { user, system } = process.cpuUsage(began)
    return (user + system) / 1e6
  }).sort((a, b) => a - b)
  return { results: size * drugs.length, perSecond: Math.round((size * drugs.length) / (seconds[4] ?? 1)) }
}

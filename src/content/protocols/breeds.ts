import { type BreedRule, kgBand } from '#core/dosing/rules.ts'

const weights = {
  sources: ['medicine-texts'],
  where: 'usual weights of grown animals of the breed; remembered and rounded outwards',
  known: 'remembered',
  strength: 'textbook',
  confidence: 'low',
  checked: '2026-11-29',
} as const

const abcb1 = {
  sources: ['wsu-problem-drugs'],
  where: 'breeds in which changed copies of ABCB1 are common: Collie, Australian Shepherd, Sheltie, German Shepherd',
  known: 'read',
  strength: 'web',
  confidence: 'high',
  checked: '2026-11-29',
} as const

/** What a breed says about weight and about ABCB1; the longest name that fits counts. A breed that is not here is not judged by it. */
export const breeds = [
  { name: 'cocker spaniel', species: 'dog', kg: { value: kgBand('9', '18'), ...weights } },
  { name: 'springer spaniel', species: 'dog', kg: { value: kgBand('15', '28'), ...weights } },
  { name: 'cavalier king charles', species: 'dog', kg: { value: kgBand('4.5', '11'), ...weights } },
  { name: 'french bulldog', species: 'dog', kg: { value: kgBand('7', '17'), ...weights } },
  { name: 'english bulldog', species: 'dog', kg: { value: kgBand('16', '32'), ...weights } },
  { name: 'pug', species: 'dog', kg: { value: kgBand('5', '12'), ...weights } },
  { name: 'shih tzu', species: 'dog', kg: { value: kgBand('3.5', '9'), ...weights } },
  { name: 'standard poodle', species: 'dog', kg: { value: kgBand('15', '34'), ...weights } },
  { name: 'labrador', species: 'dog', kg: { value: kgBand('20', '45'), ...weights } },
  { name: 'golden retriever', species: 'dog', kg: { value: kgBand('20', '42'), ...weights } },
  { name: 'west highland', species: 'dog', kg: { value: kgBand('5', '12'), ...weights } },
  { name: 'dachshund', species: 'dog', kg: { value: kgBand('3', '14'), ...weights } },
  { name: 'chihuahua', species: 'dog', kg: { value: kgBand('1', '4.5'), ...weights } },
  { name: 'beagle', species: 'dog', kg: { value: kgBand('7', '18'), ...weights } },
  { name: 'german shepherd', species: 'dog', kg: { value: kgBand('18', '48'), ...weights }, abcb1 },
  { name: 'collie', species: 'dog', kg: { value: kgBand('12', '36'), ...weights }, abcb1 },
  { name: 'border collie', species: 'dog', kg: { value: kgBand('10', '26'), ...weights } },
  { name: 'bearded collie', species: 'dog', kg: { value: kgBand('15', '32'), ...weights } },
  { name: 'sheltie', species: 'dog', kg: { value: kgBand('4.5', '13'), ...weights }, abcb1 },
  { name: 'shetland sheepdog', species: 'dog', kg: { value: kgBand('4.5', '13'), ...weights }, abcb1 },
  { name: 'australian shepherd', species: 'dog', kg: { value: kgBand('14', '34'), ...weights }, abcb1 },
  { name: 'maine coon', species: 'cat', kg: { value: kgBand('3.5', '11'), ...weights } },
  { name: 'persian', species: 'cat', kg: { value: kgBand('2.5', '7.5'), ...weights } },
  { name: 'british shorthair', species: 'cat', kg: { value: kgBand('3', '9'), ...weights } },
  { name: 'domestic shorthair', species: 'cat', kg: { value: kgBand('2.5', '8'), ...weights } },
] as const satisfies readonly BreedRule[]

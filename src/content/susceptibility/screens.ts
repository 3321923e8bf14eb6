import type { BetaLactamaseRules } from '#core/culture/rules.ts'
import { clsiByMemory, inDataset, ours } from './provenance.ts'

const coliAndKlebsiella = ['escherichia-coli', 'klebsiella-pneumoniae', 'klebsiella-oxytoca']
const withProteus = [...coliAndKlebsiella, 'proteus-mirabilis']
const inTable = { ...inDataset, sources: ['esbl-screening-table'], where: 'table 1', strength: 'study' } as const
const onPage = { ...inDataset, sources: ['esbl-screening-page'], where: 'zones that screen' } as const

/** What makes one think of enzymes that break cephalosporins or carbapenems, and what confirms it. */
export const betaLactamases: BetaLactamaseRules = {
  esblScreen: [
    { organisms: withProteus, agent: 'ceftriaxone', method: 'MIC', sign: '>=', value: { value: '2', ...inTable } },
    { organisms: withProteus, agent: 'ceftazidime', method: 'MIC', sign: '>=', value: { value: '2', ...inTable } },
    { organisms: withProteus, agent: 'cefotaxime', method: 'MIC', sign: '>=', value: { value: '2', ...inTable } },
    {
      organisms: coliAndKlebsiella,
      agent: 'cefpodoxime',
      method: 'MIC',
      sign: '>=',
      value: { value: '8', ...inTable },
    },
    {
      organisms: ['proteus-mirabilis'],
      agent: 'cefpodoxime',
      method: 'MIC',
      sign: '>=',
      value: { value: '2', ...clsiByMemory, confidence: 'medium' },
    },
    {
      organisms: coliAndKlebsiella,
      agent: 'cefpodoxime',
      method: 'DISK',
      disk: '10 µg',
      sign: '<=',
      value: { value: '17', ...onPage },
    },
    {
      organisms: withProteus,
      agent: 'ceftazidime',
      method: 'DISK',
      disk: '30 µg',
      sign: '<=',
      value: { value: '22', ...onPage },
    },
    {
      organisms: coliAndKlebsiella,
      agent: 'aztreonam',
      method: 'DISK',
      disk: '30 µg',
      sign: '<=',
      value: { value: '27', ...onPage },
    },
    {
      organisms: withProteus,
      agent: 'cefotaxime',
      method: 'DISK',
      disk: '30 µg',
      sign: '<=',
      value: { value: '27', ...onPage },
    },
    {
      organisms: coliAndKlebsiella,
      agent: 'ceftriaxone',
      method: 'DISK',
      disk: '30 µg',
      sign: '<=',
      value: { value: '25', ...onPage },
    },
    {
      organisms: ['proteus-mirabilis'],
      agent: 'cefpodoxime',
      method: 'DISK',
      disk: '10 µg',
      sign: '<=',
      value: { value: '22', ...onPage },
    },
  ],
  esblConfirmation: {
    value: {
      pairs: [
        { alone: 'cefotaxime', withInhibitor: 'cefotaxime-clavulanate' },
        { alone: 'ceftazidime', withInhibitor: 'ceftazidime-clavulanate' },
      ],
      zoneGain: 5,
      dilutionsFall: 3,
    },
    ...inDataset,
    sources: ['esbl-confirmation-study', 'esbl-reporting-page'],
    where: 'either pair; zones or dilutions',
    strength: 'study',
  },
  esblNotOffered: {
    value: ['cefovecin', 'cefpodoxime', 'cefalexin'],
    ...ours,
    sources: ['house-judgement', 'esbl-reporting-page'],
    where:
      'with the low cephalosporin limits of today the page lets categories stand; these three are not offered in an animal all the same',
  },
  ampcScreen: [
    {
      organisms: withProteus,
      agent: 'cefoxitin',
      method: 'DISK',
      disk: '30 µg',
      sign: '<',
      value: { value: '19', ...inDataset, where: 'cefoxitin screening row of Enterobacterales' },
    },
  ],
  ampcWith: { families: ['third-generation-cephalosporin'] },
  carbapenemase: {
    value: {
      organisms: ['enterobacterales'],
      families: ['carbapenem'],
      notToldBy: [{ organisms: ['proteus', 'morganella', 'providencia'], agents: ['imipenem'] }],
    },
    ...clsiByMemory,
    where:
      'a carbapenem above its S value: confirm before anything else; imipenem is high by nature in Proteus, Morganella and Providencia',
  },
}

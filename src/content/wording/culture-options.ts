import type { LaboratoryQuestion } from '#core/culture/ask-laboratory.ts'
import type { CultureOption, Dosing, OptionFindingCode } from '#core/culture/option.ts'
import type { SpecimenDoubt } from '#core/culture/specimen-standing.ts'
import type { StandingCode } from '#core/culture/standing.ts'
import type { StewardshipCategory } from '#core/culture/stewardship.ts'

/** Whether a drug can be used against what grew, as sentences: for the page of a report and for the command line. */
export const optionWords = {
  standing: {
    susceptible: '{organism} is susceptible: {raw}; {standard} calls {susceptible} susceptible.',
    'inferred-susceptible': '{organism} is taken for susceptible, because another drug that was tested stands for it.',
    'susceptible-at-dose': '{organism} is susceptible only at {dose}: {raw} by {standard}.',
    'dose-not-known':
      '{organism} is susceptible only at a higher dose ({raw}), and {standard} names none. Nobody may guess it.',
    'increased-exposure':
      '{organism}: “I” by {standard}, which means susceptible at a high exposure. The high doses known are those of grown people and say nothing for an animal.',
    'susceptible-at-some-dose':
      '{organism}: {raw} leaves open at which dose it works ({possible}). Lower dilutions would tell.',
    'not-interpretable':
      '{organism}: {raw} can mean {possible}. The panel does not reach the breakpoint, so nobody can tell from this number.',
    'fallback-susceptible':
      '{organism}: no breakpoint for this species. That of {fallbackHost} ({fallback}) would call {raw} susceptible, which is no answer for it.',
    'fallback-not-susceptible':
      '{organism}: no breakpoint for this species. That of {fallbackHost} ({fallback}) would call {raw} “{fallbackCategory}”, which is no answer for it.',
    'laboratory-says-resistant':
      '{organism}: {standard} calls {raw} susceptible and the laboratory wrote “{laboratory}”. Ask which is right before anybody relies on it.',
    'laboratory-susceptible':
      '{organism}: the laboratory wrote “{laboratory}” and no number. That is its word; nothing here can check it.',
    'laboratory-intermediate':
      '{organism}: the laboratory wrote “{laboratory}” and no number. What that means depends on its standard.',
    'laboratory-resistant': '{organism}: the laboratory wrote “{laboratory}”.',
    'd-test-missing':
      '{organism} is susceptible by its number, but resistant to erythromycin, and no D-test is on the report: it may turn resistant under treatment.',
    'esbl-suspected':
      '{organism} is susceptible by its number, but its other results raise the suspicion of an ESBL. Ask for the confirmation first.',
    'methicillin-possible':
      '{organism} is susceptible by its number, but it may be methicillin-resistant. Ask for oxacillin, mecA or PBP2a first.',
    'same-drug-differs':
      '{organism}: tested twice, once susceptible and once not. Ask the laboratory which result holds.',
    'susceptible-not-to-be-reported':
      '{organism}: this drug is not to be relied on against it, whatever the number shows ({raw}).',
    'value-unread': '{organism}: “{raw}” cannot be read as a value. Correct the report as it is printed.',
    'no-breakpoint': '{organism}: there is no breakpoint, so {raw} does not say whether it works.',
    'not-tested': '{organism}: not tested.',
    'organism-unknown': '{organism}: nobody here knows this name, so nothing was read.',
    intermediate: '{organism} is intermediate: {raw} by {standard}. No dose is known at which it works.',
    'not-susceptible': '{organism}: {raw} can mean {possible}: not susceptible; how far is not known.',
    'non-susceptible': '{organism} is not susceptible: {raw}. {standard} has no more to say than that.',
    resistant: '{organism} is resistant: {raw}; {standard} calls {resistant} resistant.',
    'resistant-methicillin-resistance':
      '{organism} is methicillin-resistant: no penicillin and no cephalosporin works, whatever the tube showed ({raw}).',
    'resistant-intrinsic': '{organism} is always resistant, by its nature, whatever the tube showed ({raw}).',
    'resistant-inducible': '{organism} turns resistant under treatment: {raw}, by the rule for inducible resistance.',
    'resistant-inferred': '{organism} is resistant, because another drug that was tested stands for it ({raw}).',
    'resistant-beta-lactamase': '{organism} makes a beta-lactamase that destroys it ({raw}).',
    'resistant-esbl': '{organism} makes an ESBL: not to be used, whatever the tube showed ({raw}).',
  } satisfies Record<StandingCode, string>,
  assumes: 'That assumes {dose}.',
  hosts: { human: 'people', dog: 'dogs', cat: 'cats' },
  rawMissing: 'no number',
  or: ' or ',
  findings: {
    'dose-needed-over-most':
      'It would need {dose}, and that is more of {drug} than this animal may have. A lower dose would not reach the organism.',
    'dose-needed-unread': 'The standard asks for “{dose}” of {drug}, which cannot be compared with a dose. Look it up.',
    'dose-below-needed': '{chosen} of {drug} is less than the {dose} at which the organism is called susceptible.',
  } satisfies Record<OptionFindingCode, string>,
  dosing: {
    'no-drug': 'No dose of it stands here: the formulary does not hold it.',
    'no-row': 'No course of it for this species stands here{because}.',
    forbidden: 'It is forbidden in this species{because}.',
    'no-animal': 'No dose: nobody wrote down which species this animal is.',
  } satisfies Record<Exclude<Dosing['kind'], 'rows'>, string>,
  because: ': {because}',
  verdicts: {
    could: 'Could be used',
    doubt: 'Nobody can say from this report',
    cannot: 'Cannot be used',
  } satisfies Record<CultureOption['verdict'], string>,
  tiers: {
    A: 'category A, avoid: not authorised for animals in Europe, only where nothing else is left',
    B: 'category B, restrict: only where nothing in C or D can work, and tested first',
    C: 'category C, caution: only where nothing in D works',
    D: 'category D, prudence: the first to be taken',
  } satisfies Record<StewardshipCategory, string>,
  noTier: 'no category of stewardship is known',
  ask: {
    'name-the-organism': 'What is “{organism}”? Ask for the species, or correct how it is read here.',
    'extend-the-dilution': 'Lower dilutions, so that the breakpoint is reached: {drugs}.',
    'give-the-number': 'The MIC or the zone, not the letter alone: {drugs}.',
    'test-methicillin': '{organism}: oxacillin, mecA or PBP2a, because methicillin resistance is possible.',
    'repeat-or-identify-again': 'Which is right, the number or the letter? {drugs}.',
    'test-these': 'Tests of drugs that have a dose for this animal and are not on the report: {drugs}.',
    advice: 'The bacteriologist’s advice on what else could work, also on drops and washing for the other ear.',
  } satisfies Record<LaboratoryQuestion['code'], string>,
  doubts: {
    canal: 'It comes from the canal, not from the bulla.',
    old: 'It is {days} days old.',
    'before-operation': 'It was taken before the operation of this ear: what grew then may be gone.',
    preliminary: 'The report is preliminary.',
  } satisfies Record<SpecimenDoubt, string>,
} as const

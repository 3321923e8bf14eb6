import type { CultureCode } from '#core/culture/findings.ts'
import type { DrugFlag } from '#core/culture/read-drug.ts'
import type { Category, ChangedBy, ChoiceStep, NoChoice } from '#core/culture/reading.ts'

/** What a person reads for each finding of a culture. One that keeps a drug from being used says what would help. */
export const cultureFindingWords = {
  'organism-not-recognised':
    'Nobody here knows the organism "{organism}", so nothing is read of it. Choose what it is, or ask the laboratory.',
  'drug-not-recognised': 'Not read, because nobody here knows the drug: {drugs}. Choose what it is; the text is kept.',
  'named-by-group-only':
    'Only the group is named ({organism}). What a species always resists, and how some resistance is told, depends on the species: ask for it.',
  'not-a-bacterium':
    '{organism} is no bacterium: antibacterial drugs do nothing to it, and there are no breakpoints for it.',
  'panel-does-not-reach':
    '{drug} {raw}: the dilutions of this panel do not reach far enough to tell. By {standard} ({ends}) it may be {possible}. Ask the laboratory to test more dilutions; it counts neither as susceptible nor as resistant.',
  'laboratory-differs':
    '{drug} {raw}: the laboratory says {theirs}, {standard} says {ours}. Ask which standard and edition the laboratory used.',
  'laboratory-differs-by-edition':
    '{drug} {raw}: the laboratory says {theirs}, {standard} says {ours}. Likely the laboratory reads by an edition before {year}: {likely} says what it says.',
  'proposed-value-lower':
    '{drug} {raw} is S by the edition in force, but a lower value has been proposed and not adopted ({proposed}): it would not be S by that. Dose behind it: {dose}.',
  'same-drug-differs':
    '{organism}: {drugs} tested twice, and one result could be used and the other not. Ask the laboratory which holds; rely on neither until then.',
  'methicillin-not-tested':
    '{organism}: nobody tested oxacillin, and single beta-lactams miss methicillin resistance. {drugs} S is not safe before that; ask for oxacillin, mecA or PBP2a.',
  'strain-named-resistant':
    'The laboratory calls it "{printed}". It is taken at its word; what it tested does not show it, so ask what that rests on.',
  'methicillin-resistant':
    '{name}: {organism} is methicillin-resistant ({by}). Every beta-lactam reads R whatever the tube showed; what was printed is kept.',
  'methicillin-presumed':
    '{name} presumed: {organism}, {by}. Every beta-lactam reads R. Ask for mecA or PBP2a to be sure.',
  'methicillin-possible':
    '{organism} may be methicillin-resistant: {by} does not settle it. Rely on no beta-lactam until oxacillin is tested further, or mecA or PBP2a.',
  'methicillin-suspected':
    '{organism} may be methicillin-resistant: R to {by}, and nobody tested oxacillin. Ask for oxacillin, mecA or PBP2a before any beta-lactam is used.',
  'methicillin-standards-disagree':
    '{drug} {raw}: by {decides} {organism} is methicillin-resistant, by {other} it is not. The stricter one decides here; ask for mecA or PBP2a.',
  'methicillin-tests-disagree':
    '{organism}: {by} says methicillin-resistant, the test for mecA or PBP2a says not. It is read as resistant until the laboratory has repeated both.',
  'repeat-beta-lactam':
    '{organism} is susceptible to oxacillin and yet R to {drugs}. That hardly goes together: ask the laboratory to repeat it.',
  'beta-lactamase': '{organism} makes a beta-lactamase (penicillin R): {drugs} read R.',
  'inducible-resistance':
    '{organism}: the D-test is positive. {drug} reads R although its own number does not show it.',
  'd-test-missing':
    '{organism} is resistant to {by}, and nobody did a D-test: resistance to {drug} may hide behind it. Do not rely on {drug} until it is tested.',
  'does-not-stand-for': '{tested} says nothing about {other}. Ask for it to be tested by itself.',
  'open-though-resistant': '{tested} is R, but that leaves {other} open. Ask for it to be tested by itself.',
  'susceptible-against-nature':
    '{organism} is always resistant to {drug}, yet it is reported susceptible. It reads R; ask the laboratory to identify the organism again.',
  'not-to-be-reported-susceptible':
    '{drug} is not to be relied on against {organism}, whatever the number: not reported susceptible.',
  'esbl-confirmed':
    '{organism} makes an extended-spectrum beta-lactamase ({by}). Cefovecin, cefpodoxime and cefalexin are not offered.',
  'esbl-screen-positive':
    '{organism} may make an extended-spectrum beta-lactamase ({by}). Ask for the confirmation with clavulanate before a cephalosporin is used.',
  'ampc-suspected': '{organism} may make an AmpC beta-lactamase ({by}). Ask the laboratory.',
  'carbapenemase-suspected':
    '{organism} may break carbapenems ({by}). Stop, have it confirmed, and tell the contact for public health of owner and practice.',
  multidrug:
    '{organism} is multidrug-resistant: {kind}. Not susceptible in {counted} ({tested} of {of} categories were tested).',
  'method-not-stated':
    '{drug} {raw}: nobody says whether this is an MIC in mg/L or a zone in mm. State the method or the unit.',
  'unit-not-known': '{drug} {raw}: this unit is not one of ours. Write the value in mg/L or mm, or ask the laboratory.',
  'unit-against-method': '{drug} {raw}: the unit does not go with the method stated. Correct the one that is wrong.',
  'comma-doubtful': '{drug} {raw}: the comma may part thousands or decimals. Write the number without it.',
  'value-not-read':
    '{drug} {raw}: this is no value that can be read. It is kept; write it again, or ask the laboratory.',
  'off-the-ladder': '{drug} {raw}: no panel and no plate gives such a number. Check it against the original.',
  'sum-of-both-parts':
    '{drug} {raw}: this looks like the sum of both parts. Write the trimethoprim part, as in 2/38, or ask the laboratory.',
} satisfies Readonly<Record<CultureCode, string>>

/** What stands beside one drug, in few words. */
export const drugFlagWords = {
  'drug-not-recognised': 'drug not recognised',
  'laboratory-category-only': 'the laboratory’s word only, without a number',
  'laboratory-differs': 'the laboratory reads it otherwise',
  'value-unreadable': 'the value cannot be read',
  'between-dilutions': 'between two dilutions, taken upwards',
  'panel-does-not-reach': 'the panel does not reach far enough',
  'not-susceptible-either-way': 'not susceptible, degree unknown',
  'susceptible-at-some-dose': 'susceptible at some dose',
  'human-derived': 'a human value that the veterinary document prints',
  'human-breakpoint': 'human breakpoint',
  'extrapolated-from-other-host': 'breakpoint of another species',
  'screening-test': 'a screening test',
  'rows-differ': 'the standard has several values, and they disagree here',
  'disk-assumed': 'disk not stated; that of the standard was taken',
  'disk-not-stated': 'disk not stated, and the laboratory works by another standard',
  'increased-exposure': 'susceptible at increased exposure: needs the high dose',
  'proposed-value-lower': 'a lower value has been proposed',
  'not-used-in-this-species': 'says nothing in this species',
  'd-test-missing': 'D-test missing',
  'not-to-be-reported-susceptible': 'not to be reported susceptible',
  'low-level-resistance': 'alone; together with another drug it may help',
  'esbl-suspected': 'extended-spectrum beta-lactamase not excluded',
  'methicillin-possible': 'methicillin resistance not excluded',
  'same-drug-differs': 'tested twice, with different answers',
  'not-printed': 'not tested',
} satisfies Readonly<Record<DrugFlag, string>>

/** Why there is no breakpoint. */
export const noChoiceWords = {
  'stated-none': 'the edition says that this drug tells nothing in this organism',
  'other-disk': 'the edition has a value for another disk only',
  'other-method': 'the edition has a value for the other method only (MIC or disk)',
  'urinary-only': 'the edition has a value for urine only, which says nothing of an ear',
  'no-row': 'the edition has no value of this species of animal for this drug and organism',
} satisfies Readonly<Record<NoChoice, string>>

export const changedByWords = {
  'methicillin-resistance': 'changed because of methicillin resistance',
  intrinsic: 'by the nature of this organism',
  inducible: 'inducible resistance',
  inferred: 'read from another drug',
  'beta-lactamase': 'changed because of a beta-lactamase',
  esbl: 'changed because of an extended-spectrum beta-lactamase',
} satisfies Readonly<Record<ChangedBy, string>>

export const categoryWords = {
  S: 'susceptible',
  SDD: 'susceptible at the higher dose named',
  I: 'intermediate',
  R: 'resistant',
  NS: 'not susceptible',
  NI: 'cannot be told from what is printed',
  no_breakpoint: 'no breakpoint',
} satisfies Readonly<Record<Category, string>>

/** At which step of the stated order a row was found. */
export const choiceStepWords = {
  'same-organism': 'a value of this organism for such a site',
  group: 'a value of its group for such a site',
  'no-site': 'a value without a body site',
  human: 'a value of people',
  'other-host': 'a value of another species of animal',
} satisfies Readonly<Record<ChoiceStep, string>>

/** The table for people. */
export const cultureTable = {
  drug: 'drug',
  printed: 'printed',
  category: 'category',
  breakpoint: 'breakpoint',
  beside: 'beside it',
  none: '–',
} as const

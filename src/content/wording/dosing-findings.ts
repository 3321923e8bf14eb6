import type { DoseCode } from '#core/dosing/findings.ts'

/** What a person reads for each finding of a planned dose. A refusal says what would make it possible. */
export const doseFindingWords = {
  'drug-unknown': 'The formulary has no drug called "{drug}". Near names: {near}.',
  'forbidden-for-species': '{drug} is forbidden in a {species}: {because}. Choose another drug.',
  'no-dose-for-species':
    'No dose of {drug} for a {species} is known here for {use}: {because}. Choose another drug, or a use that is listed: {rows}.',
  'use-not-listed': '{drug} has no row for {use} in a {species}. Listed: {rows}.',
  'route-not-listed': '{drug} has no row for {use} by "{route}" in a {species} with the words given. Listed: {rows}.',
  'dose-unit-not-listed': '{drug} for {use} in a {species} is not dosed in {unit}. Listed: {rows}.',
  'row-ambiguous':
    '{drug} for {use} in a {species} fits more than one row. Say which, by route, qualifier or unit: {rows}.',
  'dose-not-chosen':
    'Nobody chose a dose of {drug}. Known range: {low} to {high}; other sources: {others}. Give a dose, name a plan, or set a house policy.',
  'plan-unknown': 'There is no plan called "{plan}". Plans: {plans}.',
  'plan-for-other-species': 'The plan "{plan}" is for a {other}, not for a {species}.',
  excluded: '{drug} is excluded here ({why}): {because}.',
  'excluded-by-given': '{drug} is excluded after {why}: {because}.',
  'given-time-unknown':
    'When {drug} was given is not known against the time of this plan; it counts in full. Record both times.',
  'age-unknown': 'The age is not stated, and {drug} is barred {because}. State ageMonths.',
  caution: '{drug}, {why}: {because}.',
  'dose-below-range': '{dose} of {drug} is below the range {low} to {high}.',
  'dose-above-range':
    '{dose} of {drug} is above the range {low} to {high} ({factor} times its upper end). Other sources reaching it: {others}.',
  'dose-twice-range':
    '{dose} of {drug} is {factor} times the upper end of the range {low} to {high}: give the reason and a second person. Other sources reaching it: {others}.',
  'dose-five-times-range':
    '{dose} of {drug} is {factor} times the upper end of the range {low} to {high}. Check number and unit; a dose of this size is not planned here.',
  'dose-unit-suspected':
    '{dose} of {drug} is {factor} times the upper end of the range {low} to {high}: was the unit mistaken (mg for ug)?',
  'dose-unit-suspected-low':
    '{dose} of {drug} is a hundredth of the range {low} to {high} or less: was the unit mistaken (ug for mg)?',
  'over-single-maximum':
    '{amount} of {drug} is over the most for one dose, {most} (limit {limit}). Plan {most} or less.',
  'over-daily-maximum': '{drug} would reach {sum} in one day; the most is {most} ({words}). Plan less, or wait.',
  'over-daily-maximum-at-shortest':
    '{drug} {interval}: at the shortest gap it would reach {sum} in one day; the most is {most} ({words}). Write the longer gap.',
  'repeat-too-soon': '{drug} was given {ago} ago ({given}) and is repeated {interval}. Wait, or give the reason.',
  'home-too-often': '{drug} is written for {times} times a day at home; it is given {interval}. Take times out.',
  'weight-unknown': 'The weight is not known. Weigh the animal; an estimate must be marked as one.',
  'weight-impossible':
    '{weight} is not a weight of a {species} (possible here: {low} to {high}). Weigh again; a second person may stand for it with a reason.',
  'weight-unusual': '{weight} is unusual for a {species} (usual: {low} to {high}).',
  'weight-confirmed-by-person': '{weight} lies outside {low} to {high}; {by} stands for it: {reason}.',
  'weight-unconfirmed': 'The weight of {weight} itself has to be confirmed first.',
  'weight-from-later':
    'The weight is dated {hours} h after the time of this plan. Correct weighedAt or at, whichever is wrong.',
  'weight-old': 'The weight is {hours} h old (limit {limit} h). Weigh again.',
  'weight-estimated': 'The weight is an estimate. Weigh when it can be done.',
  'weight-age-unknown': 'It is not known whether the weight is from the last {hours} h. State weighedAt and at.',
  'weight-pounds-suspected': '{now} is {factor} times the last weight ({before}): pounds taken for kilograms?',
  'weight-decimal-slip': '{now} is {factor} times the last weight ({before}): a slipped decimal point?',
  'weight-changed': 'The weight changed by {percent} % (from {before} to {now}).',
  'weight-changed-much': 'The weight changed by {percent} % (from {before} to {now}): weigh again and confirm.',
  'lean-weight-used': '{drug} is counted on the lean weight, about {lean}, not on {weight}.',
  'strength-not-chosen': 'The strength of {drug} in hand is not stated, so no volume is given. Usual: {known}.',
  'strength-not-listed': 'A {drug} of {stock} is none of the usual strengths ({known}). Read the label again.',
  'strength-unit-suspected':
    'A {drug} of {stock} lies a hundredfold or more from every usual strength ({known}): was the unit mistaken? Read the label again.',
  'strength-does-not-fit':
    '{amount} of {drug} cannot be taken from {stock}. State the strength of the product in hand.',
  'strength-undiluted':
    '{drug} of {stock} never runs undiluted. State the strength of the mixed bag: what is in it, divided by its volume.',
  'strength-of-other-formulation':
    '{stock} is {drug} of another formulation ({other}), which has doses of its own and is never interchanged. Take {known}, or plan the other formulation by its name.',
  'volume-too-small': '{volume} of {drug} cannot be drawn exactly (least: {least}). Dilute: {offer}.',
  'volume-large': '{volume} of {drug} is more than {most} in one injection. Check the strength.',
  'rounded-to-nothing':
    '{volume} of {drug} rounds down to nothing on the syringe that holds it. Take a weaker product or a finer syringe.',
  'rounding-shifts-dose':
    'The syringe turns {dose} of {drug} into {delivered} ({percent} % off). Take another strength or syringe.',
  'tablet-not-cut': 'Whether the {strength} tablet of {drug} may be cut is not known; whole tablets are counted.',
  'tablet-does-not-fit':
    'No number of {strength} tablets of {drug} (division: {divides}) gives {amount} within the limit. Take another size or a liquid.',
  'tablet-rounding': '{count} tablet(s) of {strength} of {drug} give {delivered} where {amount} was planned.',
  'local-anaesthetic-ceiling':
    '{drug} would bring local anaesthetic to {sum} of the animal’s limit of 1 (all routes and both ears together). Left for this drug: {left} (full limit {limit}). Plan less, dilute for volume, or wait for washout.',
  'local-anaesthetic-infusion':
    'Local anaesthetic by infusion is {infusion} of the limit beside {others} from boluses and blocks. Method: {method}.',
  'local-anaesthetic-uncounted':
    'How many milligrams were in {given} is not known, so there is no room to count {drug} into. Record the strength.',
  'nsaid-with-steroid': '{drug} meets {other}: NSAID and steroid, {because}. {left}.',
  'two-nsaids': '{drug} meets {other}: {because}. {left}.',
  'pair-forbidden': '{drug} must not meet {other}: {because}. {left}.',
  'pair-to-think-about': '{drug} meets {other}: {because}. {left}.',
  'given-drug-unknown': '{given} is not in the formulary (near names: {near}): it counts in no check.',
  'given-drug-read-as': '{given} is not in the formulary by that name and is counted as {read}. Say which it was.',
  'given-active-unknown':
    'Which active is in {given}? Nobody has settled it, and {drug} depends on it: {because}. Ask, and record the active.',
  'patch-not-a-size':
    'There is no {drug} patch of {amount}, and a patch is never cut. Sizes: {sizes}; usual at {weight}: {usual}.',
  'patch-not-usual': 'A {drug} patch of {amount} is not the usual one at {weight}: {usual}.',
  'age-very-young': '{age} months old: under 12 weeks. Doses of grown animals may be too much; check each.',
  'age-old': '{age} years old: over 10 years. Check kidney, liver and heart before the doses.',
  'rate-too-slow': '{drug} at {rate} is slower than a pump keeps exactly (least: {least}). Run a weaker dilution.',
  'duration-not-chosen': 'How long {drug} is to run is not stated; only the amount per hour is given.',
} as const satisfies Record<DoseCode, string>

/** Units whose UCUM spelling nobody should have to read in a sentence. */
export const spelledUnits = {
  '[drp]/{eye}': 'drops per eye',
  'cm/{eye}': 'cm per eye',
  'mg/{animal}': 'mg per animal',
  '%{vol}': '% by volume',
  '{tablet}': 'tablets',
} as const

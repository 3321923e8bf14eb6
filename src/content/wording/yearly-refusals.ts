/** Why a year is not frozen, or its report is not made; with what would make it possible. */
export const yearlyRefusals = {
  'year-not-over':
    'The year {year} is not over: freeze it from 1 January {next} on. Until then its figures stand on the page of our results.',
  'nothing-operated': 'No operation of {year} is on record: name a year in which an ear was operated.',
  'already-frozen':
    'The year {year} is frozen already and stays as it is. What is known otherwise now is said in an erratum.',
  'looked-at-too-early':
    'The year {year} had not ended on that day: look at what was known on 1 January {next} or later.',
  'looked-at-in-future': 'That day has not come yet: look at what is known today, {today}, or on an earlier day.',
  'lists-behind':
    'Figures are being counted anew after a change of the house ({made} of {of}). Freeze the year when that is done.',
  'still-writing': 'Entries keep coming in while the year is read. Try again in a minute.',
  'not-frozen': 'The year {year} is not frozen: freeze it on the page of the years. Frozen are: {years}.',
  nothing: 'none',
  'no-year': 'Name the year of the report: --year 2025. Frozen are: {years}.',
  'no-out': 'Name the folder that the report is written to: --out folder.',
} as const

/** What a check of a frozen report finds. */
export const yearlyCheckWords = {
  same: 'The report on {year} comes out of its data again, to the byte: {rows} rows, data {data}, report {report}.',
  none: 'No year is frozen yet.',
  'data-missing':
    'The report on {year}: its data is not here ({hash}). Bring it back from a backup, or from the folder of files beside an export.',
  'data-changed':
    'The report on {year}: its data was changed after it was frozen; it no longer has the hash {hash}. Bring it back from a backup.',
  'data-unread': 'The report on {year}: its data has its hash and cannot be read by this program ({because}).',
  'rows-differ': 'The report on {year}: the entry says {said} rows, the data holds {rows}.',
  'method-unknown':
    'The report on {year}: this program does not know the method of version {method}. Use a newer program.',
  'report-differs':
    'The report on {year}: out of its data this program makes another report ({made}) than was frozen ({hash}).',
  'file-differs': 'The report on {year}: the file {file} is not the one that comes out of the data.',
  'file-missing': 'The report on {year}: the file {file} is not in the folder.',
} as const

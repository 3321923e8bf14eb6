import type { Action } from './action.ts'
import { readWhatGrows } from './antibiogram/read-what-grows.ts'
import { readEarsBehind } from './evidence/read-ears-behind.ts'
import { readFiguresOwed } from './evidence/read-figures-owed.ts'
import { readOwnFigures } from './evidence/read-own-figures.ts'
import { readOwnTrouble } from './evidence/read-own-trouble.ts'
import { acceptEntries } from './journal/accept-entries.ts'
import { readCase } from './journal/read-case.ts'
import { readLists } from './journal/read-lists.ts'
import { findIndexEars } from './late/find-index-ears.ts'
import { backupNow } from './machine/backup-now.ts'
import { listOwnerLinks } from './owner/list-owner-links.ts'
import { makeOwnerLink } from './owner/make-owner-link.ts'
import { revokeOwnerLink } from './owner/revoke-owner-link.ts'
import { listPapers } from './papers/list-papers.ts'
import { changePassword } from './people/change-password.ts'
import { endSession } from './people/end-session.ts'
import { findContact } from './people/find-contact.ts'
import { listDevices } from './people/list-devices.ts'
import { listPeople } from './people/list-people.ts'
import { openClinic } from './people/open-clinic.ts'
import { putAccount } from './people/put-account.ts'
import { putPerson } from './people/put-person.ts'
import { putRow } from './people/put-row.ts'
import { readContacts } from './people/read-contacts.ts'
import { readFrontDoor } from './people/read-front-door.ts'
import { readLog } from './people/read-log.ts'
import { setLeave } from './people/set-leave.ts'
import { setPin } from './people/set-pin.ts'
import { signIn } from './people/sign-in.ts'
import { signOut } from './people/sign-out.ts'
import { switchPerson } from './people/switch-person.ts'
import { whoAmI } from './people/who-am-i.ts'
import { readRegisters } from './register/read-registers.ts'
import { readTheatreList } from './theatre/read-theatre-list.ts'
import { findAccession } from './tray/find-accession.ts'
import { readFiling } from './tray/read-filing.ts'
import { readTray } from './tray/read-tray.ts'
import { listVetLinks } from './vet/list-vet-links.ts'
import { makeVetLink } from './vet/make-vet-link.ts'
import { revokeVetLink } from './vet/revoke-vet-link.ts'
import { prepareReport } from './yearly/prepare-report.ts'
import { readYears } from './yearly/read-years.ts'

/** What a person can do with the clinic's data, sorted by name; the server offers every one. */
export const actions: readonly Action[] = [
  acceptEntries,
  backupNow,
  changePassword,
  endSession,
  findAccession,
  findContact,
  findIndexEars,
  listDevices,
  listOwnerLinks,
  listPapers,
  listPeople,
  listVetLinks,
  makeOwnerLink,
  makeVetLink,
  openClinic,
  prepareReport,
  putAccount,
  putPerson,
  putRow,
  readCase,
  readContacts,
  readEarsBehind,
  readFiguresOwed,
  readFiling,
  readFrontDoor,
  readLists,
  readLog,
  readOwnFigures,
  readOwnTrouble,
  readRegisters,
  readTheatreList,
  readTray,
  readWhatGrows,
  readYears,
  revokeOwnerLink,
  revokeVetLink,
  setLeave,
  setPin,
  signIn,
  signOut,
  switchPerson,
  whoAmI,
]

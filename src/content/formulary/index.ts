// Written by scripts/write-indexes.mjs: sorted, one line per file.
import { alfaxalone } from './alfaxalone.ts'
import { amoxicillinClavulanate } from './amoxicillin-clavulanate.ts'
import { atipamezole } from './atipamezole.ts'
import { atropine } from './atropine.ts'
import { bupivacaine } from './bupivacaine.ts'
import { carbomer } from './carbomer.ts'
import { carprofen } from './carprofen.ts'
import { cefazolin } from './cefazolin.ts'
import { dexamethasone } from './dexamethasone.ts'
import { dexmedetomidine } from './dexmedetomidine.ts'
import { enrofloxacin } from './enrofloxacin.ts'
import { fentanyl } from './fentanyl.ts'
import { gabapentin } from './gabapentin.ts'
import { isoflurane } from './isoflurane.ts'
import { ketamine } from './ketamine.ts'
import { lidocaine } from './lidocaine.ts'
import { marbofloxacin } from './marbofloxacin.ts'
import { maropitant } from './maropitant.ts'
import { meloxicam } from './meloxicam.ts'
import { methadone } from './methadone.ts'
import { midazolam } from './midazolam.ts'
import { paracetamol } from './paracetamol.ts'
import { prednisolone } from './prednisolone.ts'
import { propofol } from './propofol.ts'
import { robenacoxib } from './robenacoxib.ts'
import { ropivacaine } from './ropivacaine.ts'

export const formulary = [
  alfaxalone,
  amoxicillinClavulanate,
  atipamezole,
  atropine,
  bupivacaine,
  carbomer,
  carprofen,
  cefazolin,
  dexamethasone,
  dexmedetomidine,
  enrofloxacin,
  fentanyl,
  gabapentin,
  isoflurane,
  ketamine,
  lidocaine,
  marbofloxacin,
  maropitant,
  meloxicam,
  methadone,
  midazolam,
  paracetamol,
  prednisolone,
  propofol,
  robenacoxib,
  ropivacaine,
] as const

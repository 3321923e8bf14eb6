// Written by scripts/write-indexes.mjs: sorted, one line per file.
// biome-ignore-all assist/source/organizeImports: sorted by file name, character by character.
import { acepromazine } from './acepromazine.ts'
import { alfaxalone } from './alfaxalone.ts'
import { amikacin } from './amikacin.ts'
import { amoxicillinClavulanate } from './amoxicillin-clavulanate.ts'
import { aspirin } from './aspirin.ts'
import { atipamezole } from './atipamezole.ts'
import { atropine } from './atropine.ts'
import { bupivacaine } from './bupivacaine.ts'
import { buprenorphine } from './buprenorphine.ts'
import { butorphanol } from './butorphanol.ts'
import { carbomer } from './carbomer.ts'
import { carprofen } from './carprofen.ts'
import { cefalexin } from './cefalexin.ts'
import { cefazolin } from './cefazolin.ts'
import { clindamycin } from './clindamycin.ts'
import { dexamethasone } from './dexamethasone.ts'
import { dexmedetomidine } from './dexmedetomidine.ts'
import { diazepam } from './diazepam.ts'
import { doxycycline } from './doxycycline.ts'
import { enrofloxacin } from './enrofloxacin.ts'
import { fentanyl } from './fentanyl.ts'
import { firocoxib } from './firocoxib.ts'
import { gabapentin } from './gabapentin.ts'
import { gentamicin } from './gentamicin.ts'
import { glycopyrronium } from './glycopyrronium.ts'
import { grapiprant } from './grapiprant.ts'
import { hydromorphone } from './hydromorphone.ts'
import { isoflurane } from './isoflurane.ts'
import { ketamine } from './ketamine.ts'
import { lidocaine } from './lidocaine.ts'
import { marbofloxacin } from './marbofloxacin.ts'
import { maropitant } from './maropitant.ts'
import { medetomidine } from './medetomidine.ts'
import { meloxicam } from './meloxicam.ts'
import { mepivacaine } from './mepivacaine.ts'
import { methadone } from './methadone.ts'
import { methylprednisoloneAcetate } from './methylprednisolone-acetate.ts'
import { midazolam } from './midazolam.ts'
import { morphine } from './morphine.ts'
import { naloxone } from './naloxone.ts'
import { omeprazole } from './omeprazole.ts'
import { ondansetron } from './ondansetron.ts'
import { paracetamol } from './paracetamol.ts'
import { paraffinEyeOintment } from './paraffin-eye-ointment.ts'
import { pradofloxacin } from './pradofloxacin.ts'
import { prednisolone } from './prednisolone.ts'
import { propofol } from './propofol.ts'
import { robenacoxib } from './robenacoxib.ts'
import { ropivacaine } from './ropivacaine.ts'
import { sevoflurane } from './sevoflurane.ts'
import { tramadol } from './tramadol.ts'
import { tranexamicAcid } from './tranexamic-acid.ts'
import { trazodone } from './trazodone.ts'
import { trimethoprimSulfonamide } from './trimethoprim-sulfonamide.ts'

export const formulary = [
  acepromazine,
  alfaxalone,
  amikacin,
  amoxicillinClavulanate,
  aspirin,
  atipamezole,
  atropine,
  bupivacaine,
  buprenorphine,
  butorphanol,
  carbomer,
  carprofen,
  cefalexin,
  cefazolin,
  clindamycin,
  dexamethasone,
  dexmedetomidine,
  diazepam,
  doxycycline,
  enrofloxacin,
  fentanyl,
  firocoxib,
  gabapentin,
  gentamicin,
  glycopyrronium,
  grapiprant,
  hydromorphone,
  isoflurane,
  ketamine,
  lidocaine,
  marbofloxacin,
  maropitant,
  medetomidine,
  meloxicam,
  mepivacaine,
  methadone,
  methylprednisoloneAcetate,
  midazolam,
  morphine,
  naloxone,
  omeprazole,
  ondansetron,
  paracetamol,
  paraffinEyeOintment,
  pradofloxacin,
  prednisolone,
  propofol,
  robenacoxib,
  ropivacaine,
  sevoflurane,
  tramadol,
  tranexamicAcid,
  trazodone,
  trimethoprimSulfonamide,
] as const

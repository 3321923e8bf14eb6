// Written by scripts/write-indexes.mjs: sorted, one line per file.
// biome-ignore-all assist/source/organizeImports: sorted by file name, character by character.
import { acepromazine } from './acepromazine.ts'
import { aceticAcid } from './acetic-acid.ts'
import { afoxolaner } from './afoxolaner.ts'
import { alcohol } from './alcohol.ts'
import { alfaxalone } from './alfaxalone.ts'
import { amantadine } from './amantadine.ts'
import { amikacin } from './amikacin.ts'
import { amiodarone } from './amiodarone.ts'
import { amoxicillinClavulanate } from './amoxicillin-clavulanate.ts'
import { ampicillinSulbactam } from './ampicillin-sulbactam.ts'
import { aspirin } from './aspirin.ts'
import { atipamezole } from './atipamezole.ts'
import { atropine } from './atropine.ts'
import { balancedCrystalloid } from './balanced-crystalloid.ts'
import { betamethasone } from './betamethasone.ts'
import { bupivacaine } from './bupivacaine.ts'
import { buprenorphine } from './buprenorphine.ts'
import { butorphanol } from './butorphanol.ts'
import { calciumGluconate } from './calcium-gluconate.ts'
import { carbamidePeroxide } from './carbamide-peroxide.ts'
import { carbomer } from './carbomer.ts'
import { carprofen } from './carprofen.ts'
import { cefadroxil } from './cefadroxil.ts'
import { cefalexin } from './cefalexin.ts'
import { cefazolin } from './cefazolin.ts'
import { cefovecin } from './cefovecin.ts'
import { cefpodoxime } from './cefpodoxime.ts'
import { ceftazidime } from './ceftazidime.ts'
import { cefuroxime } from './cefuroxime.ts'
import { chloramphenicol } from './chloramphenicol.ts'
import { chlorhexidine } from './chlorhexidine.ts'
import { ciclosporin } from './ciclosporin.ts'
import { cimicoxib } from './cimicoxib.ts'
import { clindamycin } from './clindamycin.ts'
import { deracoxib } from './deracoxib.ts'
import { dexamethasone } from './dexamethasone.ts'
import { dexmedetomidine } from './dexmedetomidine.ts'
import { diazepam } from './diazepam.ts'
import { diclofenac } from './diclofenac.ts'
import { dobutamine } from './dobutamine.ts'
import { docusate } from './docusate.ts'
import { dopamine } from './dopamine.ts'
import { doxycycline } from './doxycycline.ts'
import { enrofloxacin } from './enrofloxacin.ts'
import { ephedrine } from './ephedrine.ts'
import { epinephrine } from './epinephrine.ts'
import { esmolol } from './esmolol.ts'
import { fentanyl } from './fentanyl.ts'
import { firocoxib } from './firocoxib.ts'
import { flumazenil } from './flumazenil.ts'
import { flunixin } from './flunixin.ts'
import { fluocinolone } from './fluocinolone.ts'
import { fluralaner } from './fluralaner.ts'
import { fluralanerMoxidectin } from './fluralaner-moxidectin.ts'
import { freshFrozenPlasma } from './fresh-frozen-plasma.ts'
import { furosemide } from './furosemide.ts'
import { gabapentin } from './gabapentin.ts'
import { gentamicin } from './gentamicin.ts'
import { glucose } from './glucose.ts'
import { glycopyrronium } from './glycopyrronium.ts'
import { grapiprant } from './grapiprant.ts'
import { hydrocortisone } from './hydrocortisone.ts'
import { hydrogenPeroxide } from './hydrogen-peroxide.ts'
import { hydromorphone } from './hydromorphone.ts'
import { hydroxyethylStarch } from './hydroxyethyl-starch.ts'
import { hypertonicSaline } from './hypertonic-saline.ts'
import { ibuprofen } from './ibuprofen.ts'
import { imidaclopridMoxidectin } from './imidacloprid-moxidectin.ts'
import { isoflurane } from './isoflurane.ts'
import { ketamine } from './ketamine.ts'
import { ketoprofen } from './ketoprofen.ts'
import { lidocaine } from './lidocaine.ts'
import { lipidEmulsion } from './lipid-emulsion.ts'
import { lotilaner } from './lotilaner.ts'
import { marbofloxacin } from './marbofloxacin.ts'
import { maropitant } from './maropitant.ts'
import { mavacoxib } from './mavacoxib.ts'
import { meclozine } from './meclozine.ts'
import { medetomidine } from './medetomidine.ts'
import { meloxicam } from './meloxicam.ts'
import { mepivacaine } from './mepivacaine.ts'
import { meropenem } from './meropenem.ts'
import { methadone } from './methadone.ts'
import { methylprednisoloneAcetate } from './methylprednisolone-acetate.ts'
import { metronidazole } from './metronidazole.ts'
import { midazolam } from './midazolam.ts'
import { minocycline } from './minocycline.ts'
import { mometasone } from './mometasone.ts'
import { morphine } from './morphine.ts'
import { naloxone } from './naloxone.ts'
import { naproxen } from './naproxen.ts'
import { neomycin } from './neomycin.ts'
import { norepinephrine } from './norepinephrine.ts'
import { omeprazole } from './omeprazole.ts'
import { ondansetron } from './ondansetron.ts'
import { orbifloxacin } from './orbifloxacin.ts'
import { packedRedCells } from './packed-red-cells.ts'
import { paracetamol } from './paracetamol.ts'
import { paraffinEyeOintment } from './paraffin-eye-ointment.ts'
import { permethrin } from './permethrin.ts'
import { phenylephrine } from './phenylephrine.ts'
import { piroxicam } from './piroxicam.ts'
import { polymyxinB } from './polymyxin-b.ts'
import { potassiumChloride } from './potassium-chloride.ts'
import { povidoneIodine } from './povidone-iodine.ts'
import { pradofloxacin } from './pradofloxacin.ts'
import { prednisolone } from './prednisolone.ts'
import { propofol } from './propofol.ts'
import { propyleneGlycol } from './propylene-glycol.ts'
import { remifentanil } from './remifentanil.ts'
import { rifampicin } from './rifampicin.ts'
import { robenacoxib } from './robenacoxib.ts'
import { ropivacaine } from './ropivacaine.ts'
import { salicylicAcid } from './salicylic-acid.ts'
import { sarolaner } from './sarolaner.ts'
import { sarolanerSelamectin } from './sarolaner-selamectin.ts'
import { selamectin } from './selamectin.ts'
import { sevoflurane } from './sevoflurane.ts'
import { sodiumBicarbonate } from './sodium-bicarbonate.ts'
import { sodiumHyaluronate } from './sodium-hyaluronate.ts'
import { ticarcillin } from './ticarcillin.ts'
import { tobramycin } from './tobramycin.ts'
import { tolfenamicAcid } from './tolfenamic-acid.ts'
import { tramadol } from './tramadol.ts'
import { tranexamicAcid } from './tranexamic-acid.ts'
import { trazodone } from './trazodone.ts'
import { triamcinolone } from './triamcinolone.ts'
import { trimethoprimSulfonamide } from './trimethoprim-sulfonamide.ts'
import { vasopressin } from './vasopressin.ts'
import { wholeBlood } from './whole-blood.ts'

export const formulary = [
  acepromazine,
  aceticAcid,
  afoxolaner,
  alcohol,
  alfaxalone,
  amantadine,
  amikacin,
  amiodarone,
  amoxicillinClavulanate,
  ampicillinSulbactam,
  aspirin,
  atipamezole,
  atropine,
  balancedCrystalloid,
  betamethasone,
  bupivacaine,
  buprenorphine,
  butorphanol,
  calciumGluconate,
  carbamidePeroxide,
  carbomer,
  carprofen,
  cefadroxil,
  cefalexin,
  cefazolin,
  cefovecin,
  cefpodoxime,
  ceftazidime,
  cefuroxime,
  chloramphenicol,
  chlorhexidine,
  ciclosporin,
  cimicoxib,
  clindamycin,
  deracoxib,
  dexamethasone,
  dexmedetomidine,
  diazepam,
  diclofenac,
  dobutamine,
  docusate,
  dopamine,
  doxycycline,
  enrofloxacin,
  ephedrine,
  epinephrine,
  esmolol,
  fentanyl,
  firocoxib,
  flumazenil,
  flunixin,
  fluocinolone,
  fluralaner,
  fluralanerMoxidectin,
  freshFrozenPlasma,
  furosemide,
  gabapentin,
  gentamicin,
  glucose,
  glycopyrronium,
  grapiprant,
  hydrocortisone,
  hydrogenPeroxide,
  hydromorphone,
  hydroxyethylStarch,
  hypertonicSaline,
  ibuprofen,
  imidaclopridMoxidectin,
  isoflurane,
  ketamine,
  ketoprofen,
  lidocaine,
  lipidEmulsion,
  lotilaner,
  marbofloxacin,
  maropitant,
  mavacoxib,
  meclozine,
  medetomidine,
  meloxicam,
  mepivacaine,
  meropenem,
  methadone,
  methylprednisoloneAcetate,
  metronidazole,
  midazolam,
  minocycline,
  mometasone,
  morphine,
  naloxone,
  naproxen,
  neomycin,
  norepinephrine,
  omeprazole,
  ondansetron,
  orbifloxacin,
  packedRedCells,
  paracetamol,
  paraffinEyeOintment,
  permethrin,
  phenylephrine,
  piroxicam,
  polymyxinB,
  potassiumChloride,
  povidoneIodine,
  pradofloxacin,
  prednisolone,
  propofol,
  propyleneGlycol,
  remifentanil,
  rifampicin,
  robenacoxib,
  ropivacaine,
  salicylicAcid,
  sarolaner,
  sarolanerSelamectin,
  selamectin,
  sevoflurane,
  sodiumBicarbonate,
  sodiumHyaluronate,
  ticarcillin,
  tobramycin,
  tolfenamicAcid,
  tramadol,
  tranexamicAcid,
  trazodone,
  triamcinolone,
  trimethoprimSulfonamide,
  vasopressin,
  wholeBlood,
] as const

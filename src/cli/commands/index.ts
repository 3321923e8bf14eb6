// Written by scripts/write-indexes.mjs: sorted, one line per file.
// biome-ignore-all assist/source/organizeImports: sorted by file name, character by character.
import { account } from './account.ts'
import { antibiogram } from './antibiogram.ts'
import { attach } from './attach.ts'
import { audit } from './audit.ts'
import { backup } from './backup.ts'
import { breakpoints } from './breakpoints.ts'
import { calc } from './calc.ts'
import { culture } from './culture.ts'
import { demo } from './demo.ts'
import { dose } from './dose.ts'
import { emergency } from './emergency.ts'
import { exportJournal } from './export-journal.ts'
import { importJournal } from './import-journal.ts'
import { odds } from './odds.ts'
import { owed } from './owed.ts'
import { pack } from './pack.ts'
import { pool } from './pool.ts'
import { rebuild } from './rebuild.ts'
import { report } from './report.ts'
import { restore } from './restore.ts'
import { schedule } from './schedule.ts'
import { start } from './start.ts'
import { survival } from './survival.ts'
import { verify } from './verify.ts'

export const commands = [
  account,
  antibiogram,
  attach,
  audit,
  backup,
  breakpoints,
  calc,
  culture,
  demo,
  dose,
  emergency,
  exportJournal,
  importJournal,
  odds,
  owed,
  pack,
  pool,
  rebuild,
  report,
  restore,
  schedule,
  start,
  survival,
  verify,
] as const

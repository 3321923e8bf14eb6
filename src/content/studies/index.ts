// Written by scripts/write-indexes.mjs: sorted, one line per file.
// biome-ignore-all assist/source/organizeImports: sorted by file name, character by character.
import { anders2008 } from './anders-2008.ts'
import { anderson2000 } from './anderson-2000.ts'
import { bacon2003 } from './bacon-2003.ts'
import { banks2023 } from './banks-2023.ts'
import { coleman2016 } from './coleman-2016.ts'
import { devitt1997 } from './devitt-1997.ts'
import { doyle2004 } from './doyle-2004.ts'
import { esposito2026 } from './esposito-2026.ts'
import { folk2022 } from './folk-2022.ts'
import { fox2008 } from './fox-2008.ts'
import { greci2011 } from './greci-2011.ts'
import { greci2014 } from './greci-2014.ts'
import { hardie2008 } from './hardie-2008.ts'
import { hartrum2025 } from './hartrum-2025.ts'
import { imai2019 } from './imai-2019.ts'
import { janssens2017 } from './janssens-2017.ts'
import { marino1993 } from './marino-1993.ts'
import { mathews2006 } from './mathews-2006.ts'
import { mcanulty1995Ablation } from './mcanulty-1995-ablation.ts'
import { mcanulty1995Bulla } from './mcanulty-1995-bulla.ts'
import { sharp1990 } from './sharp-1990.ts'
import { smallCanalMasses2016 } from './small-canal-masses-2016.ts'
import { smeak1986 } from './smeak-1986.ts'
import { smeak1996 } from './smeak-1996.ts'
import { spivack2013 } from './spivack-2013.ts'
import { sylvestre1998 } from './sylvestre-1998.ts'
import { trevor1993 } from './trevor-1993.ts'
import { wainberg2019 } from './wainberg-2019.ts'
import { white1990 } from './white-1990.ts'
import { williams1992 } from './williams-1992.ts'

export const studies = [
  anders2008,
  anderson2000,
  bacon2003,
  banks2023,
  coleman2016,
  devitt1997,
  doyle2004,
  esposito2026,
  folk2022,
  fox2008,
  greci2011,
  greci2014,
  hardie2008,
  hartrum2025,
  imai2019,
  janssens2017,
  marino1993,
  mathews2006,
  mcanulty1995Ablation,
  mcanulty1995Bulla,
  sharp1990,
  smallCanalMasses2016,
  smeak1986,
  smeak1996,
  spivack2013,
  sylvestre1998,
  trevor1993,
  wainberg2019,
  white1990,
  williams1992,
] as const

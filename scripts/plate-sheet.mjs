/** Writes plates of many ears, views and sizes as SVG to out/plate/, to be looked at. Every file is made by the code of src. */
import { mkdirSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { withSource } from './load-source.mjs'

const out = fileURLToPath(new URL('../out/plate/', import.meta.url))
mkdirSync(out, { recursive: true })

/** What is drawn: an ear without a finding, one with many, and what is planned and done to it. */
function earsOf({ wellEar: well, unknownEar }) {
  const ill = {
    ...well,
    carriage: 'drop',
    narrowing: { vertical: 'severe', horizontal: 'closed', recorded: 'by-part' },
    mineral: 'yes',
    drum: 'ruptured',
    bullaContent: 'filled',
    bullaWall: 'thick',
  }
  const unseen = { vertical: 'could-not-see', horizontal: 'could-not-see', recorded: 'whole' }
  const operation = (kind, incision) => ({ kind, incision, canal: 'taken-away', bulla: 'opened' })
  return {
    well,
    ill,
    unknown: { ...unknownEar, narrowing: unseen, drum: 'could-not-see' },
    planned: { ...ill, surgery: operation('planned', 'T-shaped') },
    'planned-circle': { ...ill, carriage: 'erect', surgery: operation('planned', 'circular') },
    left: { ...ill, surgery: operation('done', 'T-shaped') },
    eaten: {
      ...well,
      carriage: 'drop',
      bullaContent: 'filled',
      bullaWall: 'eaten-away',
      narrowing: { vertical: 'mild', horizontal: 'moderate', recorded: 'by-part' },
      mass: { kind: 'placed', place: 'horizontal', size: 'medium' },
    },
  }
}
const wanted = process.argv.slice(2)

await withSource(async (load) => {
  const { drawPlate } = await load('core/plate/draw-plate.ts')
  const { describePlate } = await load('core/plate/describe.ts')
  const { sceneToSvg } = await load('core/plate/svg.ts')
  const ears = earsOf(await load('core/plate/plates-for-tests.ts'))
  const { plateFacts } = await load('content/plate/plate-facts.ts')
  const { plateInEnglish } = await load('content/wording/plate.ts')
  let count = 0
  for (const species of ['dog', 'cat'])
    for (const view of ['transverse', 'lateral'])
      for (const [ear, parameters] of Object.entries(ears))
        for (const side of ['LEFT', 'RIGHT'])
          for (const [width, theme] of [
            [320, 'light'],
            [768, 'dark'],
            [768, 'light'],
            [1200, 'light'],
            [642, 'print'],
          ]) {
            const name = `${species}-${view}-${ear}-${side}-${width}-${theme}`
            if (wanted.length > 0 && !wanted.some((part) => name.includes(part))) continue
            const scene = drawPlate({ ...parameters, species, view, side }, plateFacts, plateInEnglish)
            const description = describePlate(scene, plateInEnglish)
            writeFileSync(`${out}${name}.svg`, sceneToSvg(scene, { width, theme, description }))
            count += 1
          }
  console.log(`${count} plates written to out/plate`)
})

/** Writes plates of many ears, views and sizes as SVG to out/plate/, to be looked at. Every file is made by the code of src. */
import { mkdirSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { withSource } from './load-source.mjs'

const out = fileURLToPath(new URL('../out/plate/', import.meta.url))
mkdirSync(out, { recursive: true })

const well = {
  carriage: 'erect',
  narrowing: { vertical: 'none', horizontal: 'none', recorded: 'by-part' },
  mineral: 'no',
  drum: 'intact',
  bullaContent: 'air',
  bullaWall: 'normal',
  mass: { kind: 'none' },
  surgery: { kind: 'none' },
}
const ill = {
  carriage: 'drop',
  narrowing: { vertical: 'severe', horizontal: 'closed', recorded: 'by-part' },
  mineral: 'yes',
  drum: 'ruptured',
  bullaContent: 'filled',
  bullaWall: 'thick',
  mass: { kind: 'none' },
  surgery: { kind: 'none' },
}
const unknown = {
  carriage: 'not-recorded',
  narrowing: { vertical: 'could-not-see', horizontal: 'could-not-see', recorded: 'whole' },
  mineral: 'not-assessed',
  drum: 'could-not-see',
  bullaContent: 'not-assessed',
  bullaWall: 'not-assessed',
  mass: { kind: 'not-assessed' },
  surgery: { kind: 'none' },
}
const operation = (kind, incision) => ({ kind, incision, canal: 'taken-away', bulla: 'opened' })
const ears = {
  well,
  ill,
  unknown,
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
const wanted = process.argv.slice(2)

await withSource(async (load) => {
  const { drawPlate } = await load('core/plate/draw-plate.ts')
  const { describePlate } = await load('core/plate/describe.ts')
  const { sceneToSvg } = await load('core/plate/svg.ts')
  const { layers } = await load('core/plate/parameters.ts')
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
            const scene = drawPlate({ species, view, side, layers, ...parameters }, plateFacts, plateInEnglish)
            const description = describePlate(scene, plateInEnglish)
            writeFileSync(`${out}${name}.svg`, sceneToSvg(scene, { width, theme, description }))
            count += 1
          }
  console.log(`${count} plates written to out/plate`)
})

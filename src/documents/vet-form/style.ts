import { ownerPageStyle } from '../owner-page/style.ts'

/** The short form looks like the owner's page, with fields of its own. Everything can be read and sent without it. */
export const vetFormStyle = `${ownerPageStyle}
.want li, .phone li { margin: 0.35rem 0; }
.phone { border-left: 6px solid #1f5a66; padding: 0.75rem 1rem 0.25rem; background: #f1f6f7; margin: 1.5rem 0; }
.phone h2 { font-size: 1.15rem; margin: 0 0 0.5rem; color: #1c2326; }
.kept, .faults { border: 2px solid #1f5a66; border-radius: 6px; padding: 1rem 1.25rem 0.5rem; margin: 1.5rem 0; }
.faults { border-width: 2px 2px 2px 8px; }
.kept h2, .faults h2 { font-size: 1.15rem; margin: 0 0 0.5rem; color: #1c2326; }
.field { margin: 0 0 1.25rem; }
.field label { display: block; font-weight: 600; padding: 0 0 0.3rem; }
.field small { display: block; padding: 0 0 0.3rem; }
.field .wrong { display: block; font-weight: 600; margin: 0 0 0.3rem; }
.field .wrong::before { content: "\\2192\\00a0"; }
input[type="text"], input[type="date"] { min-height: 44px; width: 100%; max-width: 100%; box-sizing: border-box; font: inherit; color: inherit; background: #fff; border: 1px solid #5a666b; border-radius: 4px; padding: 0.5rem; }
.field input[aria-invalid="true"], .field textarea[aria-invalid="true"] { border: 3px solid #1c2326; }
input[type="checkbox"] { accent-color: #1f5a66; width: 1.35rem; height: 1.35rem; vertical-align: -0.3rem; margin: 0 0.6rem 0 0; }
.tick label { padding: 0.6rem 0; min-height: 44px; box-sizing: border-box; }
fieldset.ear { border-top: 1px solid #c9d2d4; margin: 1.75rem 0 1rem; padding: 1rem 0 0; }
fieldset.ear legend { font-size: 1.15rem; font-weight: 600; padding-right: 0.75rem; }
@media (min-width: 44rem) {
  .pairs { display: flex; flex-wrap: wrap; margin: 0 -0.75rem; }
  .pairs .field { width: 50%; box-sizing: border-box; padding: 0 0.75rem; }
  .pairs .field.whole { width: 100%; }
  input[type="date"] { width: 14rem; }
}
@media screen and (prefers-color-scheme: dark) {
  .phone { background: #222b2e; border-color: #8cc5d1; } .kept, .faults { border-color: #8cc5d1; }
  .phone h2, .kept h2, .faults h2 { color: #8cc5d1; }
  input[type="text"], input[type="date"] { background: #1c2326; border-color: #a9b4b8; color-scheme: dark; }
  .field input[aria-invalid="true"], .field textarea[aria-invalid="true"] { border-color: #e6ebec; }
  fieldset.ear { border-color: #4a565a; } input[type="checkbox"] { accent-color: #8cc5d1; }
}
`

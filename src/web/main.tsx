import '@fontsource-variable/source-sans-3/wght.css'
import '@fontsource-variable/source-serif-4/wght.css'
import './design/tokens.css'
import './design/base.css'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { App } from './app.tsx'
import { keepOwnFiles } from './journal/own-files.ts'
import { startSession } from './session/session.ts'
import { Fault } from './shell/fault.tsx'

const root = document.getElementById('root')
if (!root) throw new Error('The page has no root.')
createRoot(root).render(
  <StrictMode>
    <Fault page>
      <App />
    </Fault>
  </StrictMode>,
)
void startSession()
if (import.meta.env.PROD) void keepOwnFiles()

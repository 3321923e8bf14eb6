import { type ComponentType, Suspense } from 'react'
import { Link, Route, Switch } from 'wouter'
import { shellInEnglish as words } from '#content/wording/app-shell.ts'
import { Page } from './design/page.tsx'
import { caseRoutes } from './screens/case/routes.ts'
import { FindScreen } from './screens/find/screen.tsx'
import { KeptScreen } from './screens/kept/screen.tsx'
import { newReferralRoutes } from './screens/new-referral/routes.ts'
import { OwedScreen } from './screens/owed/screen.tsx'
import { resultsRoutes } from './screens/results/routes.ts'
import { settingsRoutes } from './screens/settings/routes.ts'
import { sourcesRoutes } from './screens/sources/routes.ts'
import { theatreRoutes } from './screens/theatre/routes.ts'
import { trayRoutes } from './screens/tray/routes.ts'
import { wardRoutes } from './screens/ward/routes.ts'

/** Every screen by its path, sorted; those that need the case or the sources are loaded when they are opened. */
const screens: readonly (readonly [path: string, screen: ComponentType])[] = [
  ['/', OwedScreen],
  ...caseRoutes,
  ['/find', FindScreen],
  ['/kept', KeptScreen],
  ...resultsRoutes,
  ...settingsRoutes,
  ...sourcesRoutes,
  ...newReferralRoutes,
  ...theatreRoutes,
  ...trayRoutes,
  ...wardRoutes,
]

export function Routes() {
  return (
    <Suspense fallback={<p role="status">{words.loading}</p>}>
      <Switch>
        {screens.map(([path, screen]) => (
          <Route key={path} path={path} component={screen} />
        ))}
        <Route>
          <Page title={words.notThere}>
            <p>{words.notThereHelp}</p>
            <p>
              <Link href="/">{words.pages.owed}</Link>
            </p>
          </Page>
        </Route>
      </Switch>
    </Suspense>
  )
}

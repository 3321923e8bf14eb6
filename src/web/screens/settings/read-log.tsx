import { useState } from 'react'
import type { z } from 'zod'
import type { listDevices } from '#actions/people/list-devices.ts'
import type { readLog } from '#actions/people/read-log.ts'
import { readLogInEnglish as words } from '#content/wording/app-settings.ts'
import { Field } from '../../design/field.tsx'
import { ReadingView } from '../../design/reading-view.tsx'
import { sayWhen } from '../../design/say-when.ts'
import { lists, useAction, useLists } from '../../journal/cases.ts'
import { usePeople } from '../../session/use-people.ts'
import { useWho } from '../../session/use-who.ts'
import { SettingsPage } from './frame.tsx'
import { useRefusal } from './may.ts'
import styles from './settings.module.css'

type Log = z.output<(typeof readLog)['output']>
type Devices = z.output<(typeof listDevices)['output']>

/** Who opened a case, when, on which device. */
export function ReadLogScreen() {
  const reading = useLists()
  const refusal = useRefusal(['surgeon', 'manager'], true)
  const [stream, setStream] = useState('')
  return (
    <SettingsPage part="read-log">
      {refusal ? (
        <p>{refusal}</p>
      ) : (
        <ReadingView reading={reading} again={() => void lists.refresh()}>
          {({ cases }) => (
            <>
              <Field label={words.case}>
                {(control) => (
                  <select {...control} value={stream} onChange={(event) => setStream(event.target.value)}>
                    <option value="">{words.choose}</option>
                    {[...cases]
                      .sort((a, b) => (a.name < b.name ? -1 : 1))
                      .map((one) => (
                        <option key={one.stream} value={one.stream}>
                          {[one.name, one.ownerName].filter(Boolean).join(', ')}
                        </option>
                      ))}
                  </select>
                )}
              </Field>
              {stream && <LogOf stream={stream} />}
            </>
          )}
        </ReadingView>
      )}
    </SettingsPage>
  )
}

function LogOf({ stream }: { readonly stream: string }) {
  const reading = useAction<Log>('read-log', { stream })
  const devices = useAction<Devices>('list-devices', {})
  const { pen } = useWho()
  const { nameOf } = usePeople()
  const named = new Map(
    devices.kind === 'read' ? devices.value.devices.map(({ device, name }) => [device, name] as const) : [],
  )
  return (
    <ReadingView reading={reading} again={reading.again}>
      {({ lines }) =>
        lines.length === 0 ? (
          <p>{words.none}</p>
        ) : (
          <div className={styles.scroll}>
            <table>
              <thead>
                <tr>
                  <th scope="col">{words.when}</th>
                  <th scope="col">{words.who}</th>
                  <th scope="col">{words.device}</th>
                </tr>
              </thead>
              <tbody>
                {[...lines]
                  .sort((a, b) => (a.at < b.at ? 1 : -1))
                  .map(({ person, device, at, owner }) => (
                    <tr key={`${at} ${person} ${device}`}>
                      <td>{sayWhen(at, pen.zone)}</td>
                      <td>{owner ?? nameOf(person)}</td>
                      <td>{owner === null ? named.get(device) || device : words.ownerLink}</td>
                    </tr>
                  ))}
              </tbody>
            </table>
          </div>
        )
      }
    </ReadingView>
  )
}

/**
 * What an owner typed and the clinic does not have yet, in this phone's own database: a draft of a note for each link, the
 * notes that wait, and the answers to our questions, marked or waiting. Each is named by the id of its link, never by the
 * token.
 */
const stores = { draft: 'link', note: 'id', answers: 'key' }

/** Fails where there is no database, as in a private window. */
export function openDatabase() {
  return new Promise((done, failed) => {
    const open = indexedDB.open('quiet-ear-owner', 2)
    open.onupgradeneeded = () => {
      for (const [name, keyPath] of Object.entries(stores)) {
        if (!open.result.objectStoreNames.contains(name)) open.result.createObjectStore(name, { keyPath })
      }
    }
    open.onsuccess = () => {
      // A newer page beside this one may bring another store.
      open.result.onversionchange = () => open.result.close()
      done(open.result)
    }
    open.onerror = () => failed(open.error)
  })
}

/** Done when it is on disk: what `change` asks of the stores it is given happens together or not at all. */
export function written(database, names, change) {
  return new Promise((done, failed) => {
    const tx = database.transaction(names, 'readwrite')
    const asked = change(...names.map((name) => tx.objectStore(name)))
    tx.oncomplete = () => done(asked?.result)
    tx.onabort = () => failed(tx.error)
  })
}

const every = 500

/**
 * npm puts a shell between itself and its script. When npm is ended by a signal that the shell does not pass on, the
 * server would go on alone and keep its port: it looks whether the process that started it is still there.
 */
export function endWithParent() {
  if (process.env.npm_lifecycle_event === undefined || process.platform === 'win32') return
  const parent = process.ppid
  const timer = setInterval(() => {
    if (process.ppid === parent) return
    clearInterval(timer)
    process.kill(process.pid, 'SIGTERM')
  }, every)
  timer.unref()
}

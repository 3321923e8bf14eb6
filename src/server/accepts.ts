import type { Context } from 'hono'

/** Whether the other side takes an encoding (RFC 9110, 12.5.3); one with the weight 0 it does not. */
export function accepts(c: Context, encoding: string): boolean {
  const said = c.req.header('accept-encoding') ?? ''
  return said.split(',').some((one) => one.trim().split(';')[0] === encoding && !/;\s*q=0(\.0*)?\s*$/.test(one))
}

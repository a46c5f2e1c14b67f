/**
 * A plane frame by the direct stiffness method, solved with `ml-matrix`: nothing of it is the engine's. Bars are stiff in
 * bending and along; an end is fast to its joint or hinged. Loads: forces at joints, and even loads on plan. N, mm.
 */
import { Matrix, solve } from 'ml-matrix'

export type Joint = readonly [x: number, y: number]
export interface Bar {
  readonly from: string
  readonly to: string
  /** Ends that turn freely. Default both. */
  readonly hinge?: 'both' | 'from' | 'to' | 'none'
  /** Even load downwards, N/mm on plan. */
  readonly load?: number
  readonly area?: number
  readonly inertia?: number
}
export interface Frame {
  readonly joints: Readonly<Record<string, Joint>>
  readonly bars: Readonly<Record<string, Bar>>
  /** Held: 'pin' both ways, 'roller' upwards only. */
  readonly held: Readonly<Record<string, 'pin' | 'roller'>>
  /** Forces at joints, [right, up], N. */
  readonly forces?: Readonly<Record<string, readonly [number, number]>>
}
export interface BarForces {
  /** Push at the start and at the end, N. */
  readonly push: readonly [number, number]
  /** Sagging moment at the start and at the end, N mm. */
  readonly moment: readonly [number, number]
}

export function solveFrame(frame: Frame): Record<string, BarForces> {
  const dofs = new Map<string, number>()
  const dof = (name: string): number => {
    const found = dofs.get(name)
    if (found !== undefined) return found
    dofs.set(name, dofs.size)
    return dofs.size - 1
  }
  const bars = Object.entries(frame.bars).map(([id, bar]) => {
    const [x1, y1] = frame.joints[bar.from] as Joint
    const [x2, y2] = frame.joints[bar.to] as Joint
    const length = Math.hypot(x2 - x1, y2 - y1)
    const [c, s] = [(x2 - x1) / length, (y2 - y1) / length]
    const hinge = bar.hinge ?? 'both'
    const turns = (end: 'from' | 'to') =>
      hinge === 'both' || hinge === end ? dof(`${id}.${end}.turn`) : dof(`${bar[end]}.turn`)
    const at = [
      dof(`${bar.from}.x`),
      dof(`${bar.from}.y`),
      turns('from'),
      dof(`${bar.to}.x`),
      dof(`${bar.to}.y`),
      turns('to')
    ]
    const ea = (bar.area ?? 1e6) * 1e4
    const ei = (bar.inertia ?? 1e8) * 1e4
    const l = length
    const [a, b, d, e] = [ea / l, (12 * ei) / l ** 3, (6 * ei) / l ** 2, (4 * ei) / l]
    const local = new Matrix([
      [a, 0, 0, -a, 0, 0],
      [0, b, d, 0, -b, d],
      [0, d, e, 0, -d, e / 2],
      [-a, 0, 0, a, 0, 0],
      [0, -b, -d, 0, b, -d],
      [0, d, e / 2, 0, -d, e]
    ])
    const turn = new Matrix([
      [c, s, 0, 0, 0, 0],
      [-s, c, 0, 0, 0, 0],
      [0, 0, 1, 0, 0, 0],
      [0, 0, 0, c, s, 0],
      [0, 0, 0, -s, c, 0],
      [0, 0, 0, 0, 0, 1]
    ])
    // Load per length of the bar, down: along it and across it, as forces that the joints give back when all is held.
    const w = (bar.load ?? 0) * Math.abs(c)
    const [along, across] = [(-w * s * l) / 2, (-w * c * l) / 2]
    const twist = (-w * c * l * l) / 12
    const fixed = Matrix.columnVector([along, across, twist, along, across, -twist])
    return { id, at, local, turn, fixed }
  })
  const n = dofs.size
  const stiff = Matrix.zeros(n, n)
  const load = Matrix.zeros(n, 1)
  for (const { at, local, turn, fixed } of bars) {
    const global = turn.transpose().mmul(local).mmul(turn)
    const given = turn.transpose().mmul(fixed)
    for (let i = 0; i < 6; i++) {
      const row = at[i] as number
      load.set(row, 0, load.get(row, 0) + given.get(i, 0))
      for (let j = 0; j < 6; j++) stiff.set(row, at[j] as number, stiff.get(row, at[j] as number) + global.get(i, j))
    }
  }
  for (const [joint, [x, y]] of Object.entries(frame.forces ?? {})) {
    load.set(dof(`${joint}.x`), 0, load.get(dof(`${joint}.x`), 0) + x)
    load.set(dof(`${joint}.y`), 0, load.get(dof(`${joint}.y`), 0) + y)
  }
  const heldDofs = Object.entries(frame.held).flatMap(([joint, how]) =>
    how === 'pin' ? [dof(`${joint}.x`), dof(`${joint}.y`)] : [dof(`${joint}.y`)]
  )
  const free = [...Array(n).keys()].filter((i) => !heldDofs.includes(i))
  const found = solve(stiff.selection(free, free), load.selection(free, [0]))
  const moved = Matrix.zeros(n, 1)
  free.forEach((i, k) => {
    moved.set(i, 0, found.get(k, 0))
  })
  return Object.fromEntries(
    bars.map(({ id, at, local, turn, fixed }) => {
      const ends = Matrix.sub(local.mmul(turn.mmul(moved.selection(at, [0]))), fixed)
      const f = (i: number) => ends.get(i, 0)
      return [id, { push: [f(0), -f(3)], moment: [-f(2), f(5)] }]
    })
  )
}

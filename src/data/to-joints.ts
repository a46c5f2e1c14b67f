/** The rules of joints, from content to SI. */
import { originOf } from './origin'
import type { JointRules } from './reference-types'
import type { JointsContent } from './schema'
import { INCH, PSI } from './units'

export function toJointRules(j: JointsContent): JointRules {
  const { peg, drawBore, housing, step, strength } = j
  const degrees = (n: number) => (n * Math.PI) / 180
  const toStrength = (p: JointsContent['strength']['bending']) => ({
    stress: p.psi * PSI,
    pegPower: p.pegPower,
    timberPower: p.timberPower
  })
  const others = peg.diametersIn.filter((d) => d !== peg.usualIn).sort((a, b) => a - b)
  return {
    peg: {
      diameters: [peg.usualIn, ...others].map((d) => d * INCH),
      gravityLeast: peg.gravityLeast,
      origin: originOf(peg)
    },
    pegWoods: j.pegWoods.map((p) => ({ wood: p.wood, gravity: p.gravity, origin: originOf(p) })),
    strength: {
      bearingAlong: toStrength(strength.bearingAlong),
      bearingAcross: toStrength(strength.bearingAcross),
      bending: toStrength(strength.bending),
      shear: toStrength(strength.shear),
      shearDivisor: strength.shearDivisor,
      origin: originOf(strength)
    },
    service: { wet: j.service.wet, origin: originOf(j.service) },
    distances: j.distances.map(({ kind, woods, edge, end, spacing, ...from }) => ({
      kind,
      woods,
      edge,
      end,
      spacing,
      origin: originOf(from)
    })),
    tenonSide: { diameters: j.tenonSide.diameters, origin: originOf(j.tenonSide) },
    drawBore: {
      share: { softwood: drawBore.softwoodIn / drawBore.pegIn, hardwood: drawBore.hardwoodIn / drawBore.pegIn },
      endDiameters: drawBore.endDiameters,
      origin: originOf(drawBore)
    },
    tenon: { leastPegs: j.tenon.leastPegs, origin: originOf(j.tenon) },
    housing: {
      least: housing.leastIn * INCH,
      most: housing.mostIn * INCH,
      mostShare: housing.mostShare,
      origin: originOf(housing)
    },
    endGrain: { share: j.endGrain.share, origin: originOf(j.endGrain) },
    step: {
      least: step.leastIn * INCH,
      gentle: degrees(step.gentleDegrees),
      gentleShare: step.gentleShare,
      steep: degrees(step.steepDegrees),
      steepShare: step.steepShare,
      planeSteps: step.planeSteps,
      origin: originOf(step)
    },
    plane: { share: j.plane.share, origin: originOf(j.plane) },
    notch: { endShare: j.notch.endShare, origin: originOf(j.notch) }
  }
}

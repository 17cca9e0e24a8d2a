import type { JointMethod } from '../../generated/plan-types.ts';

/** Arc or laser: heat runs along a seam. */
export function isArc(method: JointMethod): boolean {
  switch (method) {
    case 'plug weld':
    case 'arc seam':
    case 'arc stitch':
    case 'aluminium arc':
    case 'arc braze':
    case 'TIG seam':
    case 'laser seam':
      return true;
    default:
      return false;
  }
}

export function isResistance(method: JointMethod): boolean {
  return method === 'resistance spot' || method === 'projection weld' || method === 'adhesive and spot';
}

/** Puts current through the body or strikes an arc on it. */
export function isElectric(method: JointMethod): boolean {
  return isResistance(method) || (isArc(method) && method !== 'laser seam');
}

export function isWelded(method: JointMethod): boolean {
  return isArc(method) || isResistance(method);
}

/** Made for good: to undo it a sheet is drilled, cut or torn. */
export function isPermanent(method: JointMethod): boolean {
  return method !== 'bolt' && method !== 'hem';
}

export function hasAdhesive(method: JointMethod): boolean {
  return method === 'adhesive' || method === 'adhesive and spot' || method === 'adhesive and rivet';
}

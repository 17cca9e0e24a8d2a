/**
 * What a plan that is ready for release may leave out without being held, and why. Indices are written `*`: that one entry may be left out
 * somewhere does not say that each may. Reviewed by a person; what is new here needs a reason, or a rule that asks.
 */
export const mayBeSilent: Readonly<Record<string, readonly string[]>> = {
  'A day of the work says more than that it was planned.': [
    ...['finish.bake.planned', 'finish.cavities.*.planned', 'finish.primer.planned', 'finish.sealer.planned'],
    ...[
      'make_safe.high_voltage.planned',
      'make_safe.high_voltage.isolation.planned',
      'make_safe.restraints.planned',
    ],
    ...['make_safe.high_voltage.proof_of_absence.planned', 'make_safe.low_voltage.planned'],
    ...['make_safe.fire.planned', 'make_safe.lifting.planned'],
  ],
  'Where the day of the step may be left out, other steps of that day are dated.': [
    ...['finish.bake.done', 'make_safe.fire.done', 'make_safe.lifting.done', 'make_safe.restraints.done'],
    'parts.*.operations.*.joints.*.done',
  ],
  'Of a list one entry less is still an answer; who leaves one out hides what only the vehicle shows.': [
    ...['damage.direct.*', 'damage.indirect.looked_at.*', 'make_safe.restraints.units.*', 'record.kept.*'],
    ...['make_safe.lifting.points.*', 'make_safe.low_voltage.fitted.*', 'verify.high_voltage.checked.*'],
    ...[
      'verify.scan_before.codes.*',
      'verify.alignment.values.*',
      'record.owner_gets.*',
      'verify.calibrations.*',
    ],
    ...['hold_points.*', 'make_safe.low_voltage.batteries.*', 'finish.cavities.*'],
  ],
  'One of two that answer the same question.': [
    ...['make_safe.high_voltage.isolation.wait', 'make_safe.high_voltage.isolation.wait_asked'],
    ...['make_safe.lifting.cite', 'make_safe.lifting.cite.at', 'make_safe.lifting.cite.reference'],
    ...['make_safe.lifting.points', 'make_safe.low_voltage.fitted', 'make_safe.restraints.deployed'],
    ...['verify.high_voltage.by', 'make_safe.high_voltage.battery_removed', 'verify.structural_release'],
    // Who is named twice has the paper that is stated once.
    ...['make_safe.high_voltage.person.qualification', 'verify.high_voltage.by.qualification'],
    ...['parts.*.operations.*.step', 'parts.*.operations.*.refit_step', 'parts.*.operations.*.done'],
    ...['parts.*.operations.*.by', 'parts.*.operations.*.by.name', 'parts.*.operations.*.by.qualification'],
    ...['parts.*.operations.*.joints.*.to', 'parts.*.operations.*.joints.*.sheets.*'],
  ],
  'A note asks for it, or it is kept for the record.': [
    ...[
      'make_safe.fire.extinguisher',
      'record.until',
      'record.where',
      'record.owner_gets',
      'verify.scan_after.tool',
    ],
    ...[
      'verify.scan_before.tool',
      'make_safe.high_voltage.state_of_charge',
      'verify.high_voltage.state_of_charge',
    ],
    ...[
      'make_safe.high_voltage.person.role',
      'verify.high_voltage.by.role',
      'verify.structural_release.by.role',
    ],
    ...['hold_points.*.by.role', 'parts.*.operations.*.by.role', 'make_safe.restraints.units.*.name'],
    ...[
      'make_safe.restraints.units.*.unit',
      'hold_points.*.part',
      'parts.*.operations.*.joints.*.coupon.failure',
    ],
    ...['verify.alignment.values.*.before', 'verify.calibrations.*.cite.at', 'verify.alignment.cite.at'],
    ...[
      'parts.*.operations.*.fasteners.cite.at',
      'parts.*.operations.*.film_cite.at',
      'verify.high_voltage.coolant',
    ],
    ...['verify.calibrations.*.disturbed', 'verify.calibrations.*.kind'],
  ],
  'Asked only where fuel, gas or pyrotechnics stay beside the work.': ['make_safe.fire.watch'],
  'Left out, the stricter value is taken, or the worst is assumed.': [
    ...['verify.high_voltage.limit', 'sign_off.open_holds', 'parts.*.operations.*.extent'],
    ...['parts.*.operations.*.joints.*.form', 'parts.*.operations.*.joints.*.factory_adhesive'],
    ...['parts.*.operations.*.joints.*.nugget', 'parts.*.operations.*.off_vehicle'],
  ],
  'Whether paint is baked is for the painter; with it come its temperature, its time and the battery.': [
    ...['finish.bake', 'finish.bake.battery_limit.temperature', 'finish.bake.battery_limit.time'],
    'finish.bake.traction_battery',
  ],
  'The word `primer` or the place is only what the day stands for.': [
    'finish.primer.product',
    'finish.sealer.places',
  ],
  'The codes of the first scan tell what there was; those of the last decide.': [
    ...['verify.scan_before.codes.*.code', 'verify.scan_before.codes.*.explanation'],
    ...['verify.scan_before.codes.*.state', 'verify.scan_before.codes.*.system'],
  ],
  'Asked of arcs and flames; the two tips of a spot gun close the circuit between them.': [
    ...['parts.*.operations.*.control_units', 'parts.*.operations.*.earth_clamp'],
  ],
  'Spots reach no farther than 25 mm: what lies around is asked for of flames and arcs.': [
    ...['parts.*.operations.*.near', 'parts.*.operations.*.near.*', 'parts.*.operations.*.near.*.distance'],
    ...[
      'parts.*.operations.*.near.*.item',
      'parts.*.operations.*.near.*.path',
      'parts.*.operations.*.near.*.treatment',
    ],
  ],
  'The edge is asked for, and with it the flange is measured.': ['parts.*.operations.*.joints.*.overlap'],
  'Force and current are asked for by machine and program.': [
    ...[
      'parts.*.operations.*.joints.*.settings.most_current',
      'parts.*.operations.*.joints.*.settings.most_force',
    ],
  ],
  'Of a part that is not hurt, nothing has to be done.': ['parts.*.operations', 'parts.*.operations.*'],
  'Of a skin that is welded over structure number, coupon and day are asked for; settings and places are not.':
    [
      ...['parts.*.operations.*.joints.*.edge', 'parts.*.operations.*.joints.*.pitch'],
      ...['parts.*.operations.*.joints.*.flange_coat', 'parts.*.operations.*.joints.*.record'],
      ...['parts.*.operations.*.joints.*.settings', 'parts.*.operations.*.joints.*.settings.machine'],
      ...['parts.*.operations.*.joints.*.settings.program', 'parts.*.operations.*.joints.*.count'],
      ...['parts.*.operations.*.joints.*.coupon.date', 'parts.*.operations.*.joints.*.coupon.nugget'],
      'parts.*.operations.*.joints.*.factory_count',
    ],
  'Nothing is welded electrically on a body that is bonded and riveted.': [
    ...['make_safe.low_voltage', 'make_safe.low_voltage.batteries', 'make_safe.low_voltage.done'],
    'make_safe.low_voltage.key',
  ],
  'A unit that is said to stay, or to be away from the work, is judged by the rest of its entry.': [
    ...['make_safe.restraints.units.*.at', 'make_safe.restraints.units.*.state'],
    ...['make_safe.restraints.units.*.step', 'make_safe.restraints.units.*.treatment'],
  ],
  'Asked where the battery stays in during the bake.': ['finish.bake.time'],
  'Asked of what steers, brakes, carries a wheel or holds a person.': [
    ...['verify.road_test', 'parts.*.operations.*.fasteners', 'parts.*.operations.*.fasteners.cite'],
    ...['parts.*.operations.*.fasteners.cite.reference', 'parts.*.operations.*.fasteners.one_time'],
    'parts.*.operations.*.fasteners.tightened',
  ],
  'Cosmetic or bolted work rests on no page; what carries load does.': [
    ...['parts.*.operations.*.cite', 'parts.*.operations.*.cite.at', 'parts.*.operations.*.cite.reference'],
    ...['parts.*.operations.*.joints.*.cite', 'parts.*.operations.*.joints.*.cite.reference'],
  ],
  'A sensor that is not fitted is calibrated by no page.': [
    ...['verify.calibrations.*.cite', 'verify.calibrations.*.cite.reference'],
  ],
  'What is not stated is the usual: a saw, both sides, a raised head, a joint closed in time.': [
    ...['parts.*.operations.*.cut_with', 'parts.*.operations.*.joints.*.access'],
    ...[
      'parts.*.operations.*.joints.*.adhesive.closed_after',
      'parts.*.operations.*.joints.*.adhesive.open_time',
    ],
    ...['parts.*.operations.*.joints.*.adhesive.cured', 'parts.*.operations.*.joints.*.fastener.head'],
  ],
};

import { describe, expect, test } from 'vitest';
import { factsOf, tarn } from './facts-of.ts';

const joint = (entries: string, part = 'grade: HC340LA, thickness: 1.2 mm'): ReturnType<typeof factsOf> =>
  factsOf(`parts:
  - { id: own, ${part}, operations: [{ do: replace, joints: [{ ${entries} }] }] }
  - { id: hard, name: Pillar, grade: 22MnB5, thickness: 1.4 mm }
  - { id: light, class: aluminium, thickness: 1.1 mm }
  - { id: dark, name: Bracket }
  - { id: glued, class: mild, grade_from: { by: marking on part }, thickness: 0.8 mm, holds: [structural adhesive] }
  - { id: heard, name: Floor, class: mild, grade_from: { by: magnet } }
  - { id: skin, class: mild, structural: false }`);

describe('the stack', () => {
  test('is the part itself, the sheets, and the other side', () => {
    expect(joint('sheets: [own, hard]').value('joint.classes')).toEqual(['high-strength', 'press-hardened']);
    expect(joint('to: hard').value('joint.classes')).toEqual(['high-strength', 'press-hardened']);
    expect(joint('sheets: [own], to: glued').value('joint.classes')).toEqual(['high-strength', 'mild']);
    expect(joint('to: skin').value('joint.classes')).toEqual(['high-strength', 'mild']);
  });

  test('a joint with nothing is none that can be judged; end to end it may be with the rest of the part itself', () => {
    for (const entries of ['sheets: [own]', 'sheets: []', 'method: plug weld', 'sheets: [own], form: lap']) {
      expect([entries, joint(entries).value('joint.classes')]).toEqual([
        entries,
        expect.stringMatching(/^\? What it is/u),
      ]);
      expect([entries, joint(entries).fact('joint.unlike_metals').known]).toEqual([entries, false]);
    }
    expect(joint('sheets: [own], form: butt with insert').value('joint.classes')).toEqual(['high-strength']);
  });

  test('of another sheet that may carry load, mild steel by hearsay is not known to be mild', () => {
    expect(joint('to: heard').value('joint.classes')).toMatch(/^\? That Floor is mild steel is read in no/u);
    // Which metal it is takes no document.
    expect(joint('to: heard').value('joint.unlike_metals')).toBe(false);
  });

  test('the insert is a sheet of the stack', () => {
    const insert = (grade: string): unknown =>
      joint(`form: butt with insert, sheets: [own], insert: { grade: ${grade} }`).value('joint.classes');
    expect(insert('22MnB5')).toEqual(['high-strength', 'press-hardened']);
    expect(insert('HC340LA')).toEqual(['high-strength']);
    expect(insert('22MnBS')).toMatch(/insert \(22MnBS\) is not known/u);
    expect(joint('insert: { grade: DC04, thickness: 1 mm }').value('joint.insert_stated')).toBe(true);
    expect(joint('insert: { grade: DC04 }').value('joint.insert_stated')).toBe(false);
    expect(joint('insert: { thickness: 1 mm }').value('joint.insert_stated')).toBe(false);
  });

  test('a butt to the rest of the same part names that part; named nothing, the other side is open', () => {
    const butt = (entries: string): boolean =>
      joint(`form: butt with insert${entries}`).fact('joint.classes').known;
    expect(butt(', to: own')).toBe(true);
    expect(butt(', sheets: [own]')).toBe(true);
    expect(butt(', sheets: []')).toBe(false);
    expect(butt('')).toBe(false);
    expect(joint('form: lap, sheets: [own]').fact('joint.classes').known).toBe(false);
  });

  test('another part of the same kind and side, or another piece of the ring, may be the rest of one piece', () => {
    const like = (entries: string, other: string): unknown =>
      factsOf(
        `parts: [{ id: a, kind: door ring, side: left, operations: [{ do: replace, joints: [{ ${entries} }] }] }, { id: b, ${other} }]`,
      ).value('joint.to_like_part');
    expect(like('to: b', 'kind: door ring, side: left')).toBe(true);
    expect(like('sheets: [a, b]', 'kind: door ring, side: left')).toBe(true);
    // The plan’s own word that the joint is drawn makes two pieces of nothing.
    expect(like('to: b, drawn: true', 'kind: door ring, side: left')).toBe(true);
    expect(like('to: b', 'kind: reinforcement, name: Foot of the ring')).toBe(true);
    expect(like('to: b', 'kind: reinforcement, name: Reinforcement')).toBe(false);
    expect(like('to: b', 'kind: side panel, name: Skin over the ring')).toBe(false);
    expect(like('to: b', 'kind: door ring, side: right')).toBe(false);
    expect(like('to: b', 'kind: sill, side: left')).toBe(false);
    expect(like('to: a', 'kind: door ring, side: left')).toBe(false);
  });

  test('of two rings that are both said to be in pieces, none is the rest of the other', () => {
    const of = (own: string, other: string): unknown =>
      factsOf(
        `parts: [{ id: a, kind: door ring, side: left${own}, operations: [{ do: replace, joints: [{ to: b }] }] }, { id: b, kind: door ring, side: left${other} }]`,
      ).value('joint.to_like_part');
    expect(of(', one_piece: false', ', one_piece: false')).toBe(false);
    expect(of(', one_piece: false', '')).toBe(true);
    expect(of('', ', one_piece: false')).toBe(true);
  });

  test('the seam at the cut, by its mark or by its form', () => {
    const at = (entries: string): unknown =>
      factsOf(`parts: [{ id: a, operations: [{ do: section, at: B, joints: [{ ${entries} }] }] }]`).value(
        'joint.at_cut',
      );
    expect(at('place: B, form: flange')).toBe(true);
    expect(at('place: D, form: butt with insert')).toBe(false);
    expect(at('form: butt with insert')).toBe(true);
    expect(at('form: lap, to: a')).toBe(true);
    // Lapped onto another part it is a flange of the piece.
    expect(at('form: lap')).toBe(false);
    expect(at('form: flange')).toBe(false);
    expect(at('method: resistance spot')).toBe(false);
  });

  test('a coupon that was torn after the joint', () => {
    const late = (entries: string): unknown =>
      factsOf(`parts: [{ operations: [{ do: weld, ${entries} }] }]`).value('joint.coupon_late');
    const coupon = 'coupon: { result: passed, date: 2026-10-09 }';
    expect(late(`joints: [{ done: 2026-10-08, ${coupon} }]`)).toBe(true);
    expect(late(`done: 2026-10-08, joints: [{ ${coupon} }]`)).toBe(true);
    expect(late(`joints: [{ done: 2026-10-09, ${coupon} }]`)).toBe(false);
    expect(late(`joints: [{ ${coupon} }]`)).toBe(false);
    expect(late('joints: [{ done: 2026-10-08, coupon: passed }]')).toBe(false);
  });

  test('what the joint itself cites', () => {
    const cited = (cite: string): unknown =>
      factsOf(`${tarn}\nparts: [{ operations: [{ do: weld, joints: [{ ${cite} }] }] }]`).value(
        'joint.citation',
      );
    expect(cited('cite: { reference: own, at: p. 1 }')).toBe('covers');
    expect(cited('cite: { reference: old, at: p. 1 }')).toBe('other year');
    expect(cited('cite: [{ reference: old }, { reference: own }]')).toBe('covers');
    expect(cited('cite: { reference: gone }')).toBe('not listed');
    expect(cited('count: 1')).toBe('none');
  });

  test('why what the joint itself cites does not count', () => {
    const elsewhere = (cite: string, more = ''): unknown =>
      factsOf(
        `vehicle: { maker: Corvane, model: Tarn, body: wagon, model_year: 2021, build_date: 2021-03-18 }\nreferences:\n${more}\nparts: [{ operations: [{ do: weld, joints: [{ ${cite} }] }] }]`,
      ).value('joint.cited_elsewhere');
    const document = (kind: string, covers: string): string =>
      `  - { id: d, ${kind}document: BRM-1, revision: C, covers: { maker: Corvane, model: Tarn, bodies: [wagon], ${covers} } }`;
    const cite = 'cite: { reference: d, at: p. 1 }';
    const procedure = 'kind: maker procedure, ';
    expect(
      elsewhere(cite, document(procedure, 'years: 2020-2022, built: { from: 2021-04-01, to: 2022-07-31 }')),
    ).toBe('BRM-1 revision C, which covers build dates 2021-04-01 to 2022-07-31, not 2021-03-18');
    expect(elsewhere(cite, document(procedure, 'years: 2018-2019'))).toBe(
      'BRM-1 revision C, which covers model years 2018 to 2019, not 2021',
    );
    expect(elsewhere(cite, document('kind: maker manual, ', 'years: 2020-2022'))).toBe(
      'BRM-1 revision C, which is of the maker but no procedure (maker manual)',
    );
    expect(elsewhere(cite, document('kind: training, ', 'years: 2020-2022'))).toBe(
      'BRM-1 revision C, which is no document of the maker (training)',
    );
    expect(elsewhere(cite, document('', 'years: 2020-2022'))).toBe(
      'BRM-1 revision C, of which the kind is not stated',
    );
    expect(elsewhere(cite, document(procedure, 'years: 2020-2022'))).toContain('?');
    expect(elsewhere('count: 1', document(procedure, 'years: 2018-2019'))).toContain('?');
  });

  test('with a sheet that is not known the classes are not, unless hardened steel is there already', () => {
    expect(joint('to: dark').value('joint.classes')).toMatch(/^\? .*Bracket/u);
    expect(joint('sheets: [own, gone]').value('joint.classes')).toMatch(/^\? /u);
    expect(joint('sheets: [hard, dark]').value('joint.classes')).toEqual(['high-strength', 'press-hardened']);
    expect(joint('to: hard', 'kind: sill').value('joint.classes')).toEqual(['press-hardened']);
  });

  test('unlike metals', () => {
    expect(joint('to: light').value('joint.unlike_metals')).toBe(true);
    expect(joint('to: hard').value('joint.unlike_metals')).toBe(false);
    expect(joint('to: dark').fact('joint.unlike_metals').known).toBe(false);
  });

  test('glass is no metal, nor a lamp or trim of which none is stated', () => {
    const unlike = (entries: string, own: string): unknown => {
      const fact = joint(entries, own).fact('joint.unlike_metals');
      return fact.known ? fact.value : '?';
    };
    expect(unlike('to: dark', 'kind: glass')).toBe(false);
    expect(unlike('to: light', 'kind: glass, class: composite')).toBe(false);
    expect(unlike('method: adhesive', 'kind: glass')).toBe(false);
    expect(unlike('to: light', 'kind: trim')).toBe(false);
    expect(unlike('to: hard', 'kind: lamp')).toBe(false);
    expect(unlike('to: hard', 'kind: trim, class: aluminium')).toBe(true);
    expect(unlike('to: hard', 'kind: trim, structural: true')).toBe('?');
    expect(unlike('sheets: [own, light, hard]', 'kind: glass')).toBe(true);
    expect(unlike('to: light', 'kind: bracket')).toBe('?');
  });

  test('thicknesses are stated when every sheet has one', () => {
    expect(joint('to: hard').value('joint.thicknesses_stated')).toBe(true);
    expect(joint('to: dark').value('joint.thicknesses_stated')).toBe(false);
    expect(joint('to: gone').value('joint.thicknesses_stated')).toBe(false);
  });

  test('the number of sheets is the one that is listed', () => {
    expect(joint('sheets: [own, hard, glued]').value('joint.sheets')).toBe(3);
    expect(joint('to: hard').fact('joint.sheets').known).toBe(false);
  });

  test('the other part is called as the shop calls it', () => {
    expect(joint('to: hard').value('joint.to')).toBe('Pillar');
    expect(joint('to: gone').value('joint.to')).toBe('gone');
    expect(joint('count: 1').fact('joint.to').known).toBe(false);
  });
});

describe('how it is joined', () => {
  test('a method that is not stated leaves open what hangs on it', () => {
    for (const name of ['joint.method', 'joint.arc', 'joint.spot', 'joint.welded', 'joint.form']) {
      expect([name, joint('to: hard').fact(name).known]).toEqual([name, false]);
    }
  });

  test('spots, rivets and adhesive lie on a flange; a seam may meet edge to edge and has to say', () => {
    expect(joint('method: resistance spot').fact('joint.form')).toMatchObject({
      value: 'flange',
      from: 'assumed',
    });
    expect(joint('method: arc seam').fact('joint.form').known).toBe(false);
    expect(joint('method: arc seam, form: lap').fact('joint.form')).toMatchObject({
      value: 'lap',
      from: 'stated',
    });
  });

  test('insulated by a layer that is named, or by adhesive', () => {
    expect(joint('method: blind rivet').fact('joint.insulated').known).toBe(false);
    for (const bare of ['none', 'not needed', 'Bare metal on metal', 'uncoated bolts']) {
      expect(joint(`method: blind rivet, insulation: ${bare}`).value('joint.insulated')).toBe(false);
    }
    expect(joint('method: blind rivet, insulation: tape').value('joint.insulated')).toBe(true);
    expect(joint('method: adhesive and rivet').value('joint.insulated')).toBe(true);
    expect(joint('method: blind rivet, adhesive: { product: P }').value('joint.insulated')).toBe(true);
  });
});

describe('how many', () => {
  test('fewer than the factory by the difference; more is below zero', () => {
    expect(joint('factory_count: 42, count: 40').value('joint.fewer')).toBe(2);
    expect(joint('factory_count: 42, count: 42').value('joint.fewer')).toBe(0);
    expect(joint('factory_count: 42, count: 56').value('joint.fewer')).toBe(-14);
    expect(joint('factory_count: 42').fact('joint.fewer').known).toBe(false);
    expect(joint('count: 42').fact('joint.fewer').known).toBe(false);
  });

  test('what was made is short when it is not recorded or less than planned', () => {
    expect(joint('count: 40').value('joint.done_count_short')).toBe(true);
    expect(joint('count: 40, count_done: 39').value('joint.done_count_short')).toBe(true);
    expect(joint('count: 40, count_done: 40').value('joint.done_count_short')).toBe(false);
  });
});

test.each([
  ['to: hard', 'none'],
  ['coupon: planned', 'planned'],
  ['coupon: passed', 'passed'],
  ['coupon: { result: failed }', 'failed'],
  ['coupon: {}', 'planned'],
  ['coupon: pased', 'none'],
])('the coupon of { %s } is %s', (entries, expected) => {
  expect(joint(entries).value('joint.coupon')).toBe(expected);
});

describe('adhesive of the factory', () => {
  const leftOut = (entries: string): ReturnType<typeof factsOf> => joint(entries);

  test.each([
    ['factory_adhesive: true', true],
    ['factory_adhesive: true, method: resistance spot', true],
    ['factory_adhesive: true, method: adhesive and spot', false],
    ['factory_adhesive: true, adhesive: { product: P }', false],
    ['factory_adhesive: false', false],
  ])('{ %s } is left out: %s', (entries, expected) => {
    expect(leftOut(entries).value('joint.adhesive_left_out')).toBe(expected);
  });

  test('not stated: assumed none, unless a sheet of the stack holds some', () => {
    expect(leftOut('to: hard').fact('joint.adhesive_left_out')).toMatchObject({
      value: false,
      from: 'assumed',
    });
    expect(leftOut('to: glued').fact('joint.adhesive_left_out').known).toBe(false);
  });
});

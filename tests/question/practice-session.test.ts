// What is asked when: grades, mastery, mistakes that come back, and the plan of a session, over the course's own templates.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  boxAfter,
  boxDays,
  catalogueOf,
  comesBack,
  dateOf,
  dayNumber,
  dueDay,
  fetchTemplates,
  gradeOf,
  lessonOf,
  type Memory,
  objectivesOf,
  type Review,
  randomOf,
  recurringMistakes,
  reviewed,
  type SessionPlan,
  serving,
  session,
  standingOf,
  templates,
  templatesOfLesson,
} from '#engine';

const catalogue = catalogueOf(Object.values(templates));
const settings = { retention: 0.9 };
const review = (day: number, template: string, grade: Review['grade'] = 3, more: Partial<Review> = {}): Review => ({
  day,
  template,
  grade,
  seed: `s${day}`,
  difficulty: templates[template]?.difficulty ?? 1,
  tags: [],
  ...more,
});
const remembered = (objective: string, ...reviews: Review[]): Memory =>
  reviews.reduce<Memory | undefined>((memory, one) => reviewed(objective, memory, one), undefined) as Memory;

describe('a grade', () => {
  it.each([
    ['wrong', { marks: 0, hinted: false, tries: 1, sure: 'sure' }, 1],
    ['right on the second try', { marks: 1, hinted: false, tries: 2, sure: 'sure' }, 2],
    ['right after a step was shown', { marks: 1, hinted: true, tries: 1, sure: 'sure' }, 2],
    ['right', { marks: 1, hinted: false, tries: 1 }, 3],
    ['right by a guess', { marks: 1, hinted: false, tries: 1, sure: 'guess' }, 3],
    ['right and sure of it', { marks: 1, hinted: false, tries: 1, sure: 'sure' }, 4],
  ] as const)('of an answer that is %s', (_name, answered, grade) => expect(gradeOf(answered)).toBe(grade));
});

describe('the templates of a lesson', () => {
  it.each([...new Set(catalogue.map(({ lesson }) => lesson))])('%s can be fetched alone', async (lesson) => {
    expect(await fetchTemplates(lesson)).toEqual(templatesOfLesson(lesson));
  });
});

describe('every objective', () => {
  const all = Object.values(templates).flatMap(({ lesson, objectives }) => objectives.map((one) => ({ lesson, one })));

  it('begins with the number of its lesson', () => {
    for (const { lesson, one } of all) expect(lessonOf(one)).toBe(lesson);
  });

  it('can be asked in both practices', () => {
    for (const { one } of all)
      for (const practice of ['iec', 'na'] as const)
        expect(serving(catalogue, one, practice), `${one} in ${practice}`).not.toEqual([]);
  });
});

describe('mastery', () => {
  const objective = '1.2 rank mm² and AWG on one scale'; // served by Q07 (1) and Q08 (2)
  const days = [0, 2, 12, 60];
  const standing = (...reviews: Review[]) => standingOf(remembered(objective, ...reviews), catalogue, 'iec');
  const good = days.map((day, i) => review(day, i % 2 === 0 ? 'Q07' : 'Q08'));

  it('is three days right, by two sorts of question, one of difficulty 2, kept for 21 days, with no mistake of late', () => {
    expect(serving(catalogue, objective, 'iec').map(({ id }) => id)).toEqual(['Q07', 'Q08']);
    expect(standing(...good)).toMatchObject({ mastered: true, rightDays: 4, sorts: 2 });
  });

  it.each([
    ['it was right on two days only', good.slice(0, 2), { rightDays: 2 }],
    ['one sort of question was answered', days.map((day) => review(day, 'Q07')), { sorts: 1, hardEnough: false }],
    ['it does not keep for 21 days', [0, 1, 2].map((day, i) => review(day, i ? 'Q07' : 'Q08')), { keeps: false }],
    ['a mistake was recognised of late', [...good, review(70, 'Q07', 2, { tags: ['M08'] })], { clear: false }],
    ['a hint was needed each time', good.map((one) => ({ ...one, grade: 2 as const })), { rightDays: 0 }],
  ])('is not there when %s', (_name, reviews, why) =>
    expect(standing(...reviews)).toMatchObject({ mastered: false, ...why }),
  );

  it('is lost by a lapse, and won again by the same road', () => {
    expect(standing(...good, review(90, 'Q07', 1)).mastered).toBe(false);
    const again = [91, 95, 110, 180].map((day, i) => review(day, i % 2 === 0 ? 'Q07' : 'Q08'));
    expect(standing(...good, review(90, 'Q07', 1), ...again).mastered).toBe(true);
  });

  it('asks for what the course has, where an objective has one sort of question', () => {
    const single = '1.1 work out the heat of each metre';
    expect(serving(catalogue, single, 'iec')).toHaveLength(1);
    const memory = remembered(single, ...days.map((day) => review(day, 'Q01')));
    expect(standingOf(memory, catalogue, 'iec')).toMatchObject({ mastered: true, sortsWanted: 1 });
  });
});

describe('mistakes that keep coming back', () => {
  const tagged = (day: number, ...tags: Review['tags']) => review(day, 'Q01', 1, { tags });

  it('were recognised twice, and lead to the lesson that deals with them', () => {
    const memories = [
      remembered('1.1 work out the heat of each metre', tagged(1, 'M01'), tagged(2, 'M02'), tagged(4, 'M01')),
      remembered('3.2 resize', review(3, 'Q46', 1, { tags: ['M49'] }), review(5, 'Q46', 1, { tags: ['M49'] })),
    ];
    expect(recurringMistakes(memories)).toEqual([
      { id: 'M49', times: 2, day: 5, lesson: '3.2' },
      { id: 'M01', times: 2, day: 4, lesson: '1.1' },
    ]);
  });

  it('are counted once where one answer serves two objectives', () => {
    const one = review(3, 'Q62', 1, { tags: ['M48'] });
    const both = ['4.4 compare let-through I²t', '4.4 judge selectivity of two devices'];
    expect(recurringMistakes(both.map((objective) => remembered(objective, one)))).toEqual([]);
  });

  it('are let go when the five latest answers are free of them', () => {
    const right = [5, 6, 7, 8, 9].map((day) => review(day, 'Q01'));
    const memory = remembered('1.1 work out the heat of each metre', tagged(1, 'M01'), tagged(2, 'M01'), ...right);
    expect(recurringMistakes([memory])).toEqual([]);
  });
});

describe('a session', () => {
  const plan = (more: Partial<SessionPlan> = {}): SessionPlan => ({
    catalogue,
    memories: [],
    begun: [],
    today: 100,
    settings,
    practice: 'iec',
    random: randomOf('trial'),
    ...more,
  });
  /** Memories of the first objectives of the course, some due on day 100 and some not. */
  const some = fc
    .array(fc.integer({ min: 60, max: 99 }), { minLength: 1, maxLength: 30 })
    .map((days) =>
      days.map((day, i) => remembered(objectivesOf(catalogue, 'iec')[i] as string, review(day, 'Q01', i % 2 ? 3 : 1))),
    );
  const begun = ['1.1', '1.2', '2.1', '3.1'];

  it('asks nothing of one who has begun nothing, and the lessons begun of one who is new', () => {
    expect(session(plan())).toEqual([]);
    const asks = session(plan({ begun: ['1.1'] }));
    expect(asks.length).toBeGreaterThan(0);
    expect(asks.every(({ lesson, why }) => lesson === '1.1' && why === 'new')).toBe(true);
  });

  it('asks at most eight, due before new, only what is due or new, each with numbers of its own', () => {
    fc.assert(
      fc.property(some, fc.string(), (memories, seed) => {
        const asks = session(plan({ memories, begun, random: randomOf(seed) }));
        expect(asks.length).toBeLessThanOrEqual(8);
        const whys = asks.map(({ why }) => why);
        expect(whys).toEqual(whys.toSorted()); // 'due' stands before 'new'
        for (const { objective, why, template, lesson } of asks) {
          const memory = memories.find((one) => one.objective === objective);
          if (why === 'due') expect(memory && dueDay(memory, settings)).toBeLessThanOrEqual(100);
          else expect(memory === undefined && begun.includes(lesson)).toBe(true);
          expect(templates[template]?.objectives).toContain(objective);
        }
        expect(new Set(asks.map(({ seed }) => seed)).size).toBe(asks.length);
      }),
    );
  });

  it('puts what is most forgotten first, and leaves out what is not due', () => {
    const [a, b, c] = objectivesOf(catalogue, 'iec') as [string, string, string];
    const memories = [
      remembered(a, review(95, 'Q01', 3)),
      remembered(b, review(60, 'Q02', 1)),
      remembered(c, review(99, 'Q03', 4)),
    ];
    expect(session(plan({ memories })).map(({ objective }) => objective)).toEqual([b, a]);
  });

  it('mixes units, and repeats no template while another will do', () => {
    const objectives = ['1.1', '2.1', '3.1'].flatMap((lesson) =>
      objectivesOf(catalogue, 'iec')
        .filter((one) => lessonOf(one) === lesson)
        .slice(0, 2),
    );
    const memories = objectives.map((objective) =>
      remembered(objective, review(60, serving(catalogue, objective, 'iec')[0]?.id ?? '', 1)),
    );
    const asks = session(plan({ memories }));
    const next = asks.slice(1).map((ask, i) => [asks[i], ask] as const);
    for (const [before, ask] of next) expect(ask.objective[0]).not.toBe(before?.objective[0]);
  });

  it.each([...new Set(catalogue.map(({ lesson }) => lesson))])(
    'of lesson %s alone is full, and asks every objective of it',
    (lesson) => {
      for (const practice of ['iec', 'na'] as const) {
        const asks = session(plan({ lesson, practice }));
        const all = objectivesOf(catalogue, practice).filter((one) => lessonOf(one) === lesson);
        expect(asks).toHaveLength(8);
        expect(new Set(asks.map(({ objective }) => objective))).toEqual(new Set(all));
        for (const [i, { template }] of asks.entries()) expect(template).not.toBe(asks[i - 1]?.template);
      }
    },
  );

  it('is another every time, and the same for the same seed', () => {
    const asks = (seed: string) => session(plan({ begun, random: randomOf(seed) }));
    expect(asks('a')).toEqual(asks('a'));
    expect(asks('a')).not.toEqual(asks('b'));
  });

  it('brings back what was sure and wrong, with new numbers, three questions on or at the end, twice at most', () => {
    const by = plan({ begun });
    const asks = session(by);
    const once = comesBack(asks, 1, by);
    expect(once).toHaveLength(asks.length + 1);
    expect(once[4]).toMatchObject({ objective: asks[1]?.objective, why: 'again' });
    expect(asks.map(({ seed }) => seed)).not.toContain(once[4]?.seed);
    const last = comesBack(asks, asks.length - 1, by);
    expect(last.at(-1)).toMatchObject({ objective: asks.at(-1)?.objective, why: 'again' });
    const twice = comesBack(once, 4, by);
    expect(twice.filter(({ why }) => why === 'again')).toHaveLength(2);
    const third = twice.findLastIndex(({ why }) => why === 'again');
    expect(comesBack(twice, third, by)).toBe(twice);
  });
});

describe('the plain rule of five boxes', () => {
  it('moves up one for right, waits longer in each, and goes to the first for wrong', () => {
    const road = [0];
    for (const right of [true, true, true, true, true, true, false]) road.push(boxAfter(road.at(-1) ?? 0, right));
    expect(road).toEqual([0, 1, 2, 3, 4, 5, 5, 1]);
    expect(boxDays).toEqual(boxDays.toSorted((a, b) => a - b));
  });
});

describe('days', () => {
  it('are counted from 1970 in whole numbers, and read back', () => {
    expect(dayNumber('1970-01-02')).toBe(1);
    expect(dateOf(dayNumber('2032-02-29') ?? 0)).toBe('2032-02-29');
  });

  it.each(['2031-02-29', '2031-13-01', '4 May', '2031-5-4', ''])('%s is none', (date) =>
    expect(dayNumber(date)).toBeUndefined(),
  );
});

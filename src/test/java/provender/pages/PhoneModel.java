package provender.pages;

/**
 * A phone's store driven by random operations beside a plain model of it, in the page's own language. Whatever is answered
 * as done has happened once, whatever is answered as failed has not happened at all.
 */
final class PhoneModel {
  private PhoneModel() {}

  /** {@code phoneModel(name)}: store, model, one random step at a time, and whether the two are of one mind. */
  static final String SCRIPT =
      """
      async () => {
        const [{ PhoneStore }, { LookBack }] = [await import('/store/phone-store.js'), await import('/store/look-back.js')];
        window.random = (seed) => () => {
          seed = (seed + 0x6d2b79f5) | 0;
          let mixed = Math.imul(seed ^ (seed >>> 15), 1 | seed);
          mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
          return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
        };
        window.phoneModel = async (name) => {
          const store = new PhoneStore(name);
          const look = new LookBack(name);
          const device = await store.device();
          const model = { entries: new Map(), waiting: [], refused: [], taps: 0, cursor: null, pulled: 0 };
          const failures = [];
          // One of the entries there are, so that changes are about something.
          const some = (nth) => [...model.entries.keys()][nth % (model.entries.size || 1)] ?? 'nothing yet';
          const kinds = [
            () => ['feeding', { items: [{ food: 'mysis_frozen', grams: 3.5 }] }],
            (nth) => ['withdrawal', { entry: some(nth), withdrawn: nth % 3 > 0 }],
            (nth) => ['amendment', { entry: some(nth), set: { 'body.note': `later ${nth}` } }],
            () => ['record', { record: 'feeder', key: 'left', set: { running: false }, saw: { running: 0 } }],
          ];
          const draft = (by = device, nth = 0) => {
            const [kind, body] = kinds[nth % kinds.length](nth);
            return { id: crypto.randomUUID(), tank: 'reef', device: by, kind, v: 1, happenedAt: `2026-06-${10 + (nth % 9)}T08:10:00+02:00`,
              zone: 'Europe/Berlin', recordedAt: new Date().toISOString(), by: 'teo', body };
          };
          const tap = async (nth) => {
            const entry = await store.record(draft(device, nth));
            model.taps++;
            model.entries.set(entry.id, entry);
            model.waiting.push(entry.id);
            if (entry.deviceSeq !== model.taps) failures.push(`tap ${model.taps} got number ${entry.deviceSeq}`);
          };
          const pull = async () => {
            const after = model.cursor?.after ?? 0;
            const entries = [1, 2, 3, 4, 5].map((place) => ({ ...draft('another', after + place), deviceSeq: after + place, seq: after + place }));
            await store.copy.pulled('reef', { entries, epoch: 'one' });
            model.cursor = { tank: 'reef', after: after + 5, epoch: 'one' };
            for (const entry of entries) model.entries.set(entry.id, entry);
          };
          const answer = async (count, refuse) => {
            const sent = await store.unsent('reef', count);
            const answers = sent.map(({ id }, i) => (refuse && i === 0 ? { id, outcome: 'refused', problem: null }
              : { id, outcome: 'accepted', seq: 1e6 + model.entries.size + i }));
            await store.answered(sent, answers);
            sent.forEach((entry, i) => {
              model.waiting = model.waiting.filter((id) => id !== entry.id);
              if (answers[i].outcome === 'refused') {
                model.refused.push(entry.id);
                model.entries.delete(entry.id);
              } else model.entries.set(entry.id, { ...entry, seq: answers[i].seq });
            });
          };
          const again = async () => {
            const id = model.refused[0];
            const entry = id && (await store.tryAgain(id));
            if (!entry) return;
            model.refused.shift();
            model.entries.set(id, entry);
            model.waiting.push(id);
          };
          const restart = async () => {
            await store.copy.restart('reef', device, 'one');
            model.cursor = { tank: 'reef', after: 0, epoch: 'one' };
            for (const [id, { seq, ...bare }] of model.entries) {
              model.entries.set(id, bare);
              if (bare.device === device && !model.waiting.includes(id)) model.waiting.push(id);
            }
          };
          const deeds = { tap, pull, answer: () => answer(3, false), refuse: () => answer(2, true), again, restart };
          const step = (chance) => (chance < 0.5 ? () => tap(Math.floor(chance * 1e6)) : chance < 0.65 ? pull : chance < 0.85 ? deeds.answer
            : chance < 0.92 ? deeds.refuse : chance < 0.97 ? again : restart)();
          const sorted = (ids) => JSON.stringify([...ids].sort());
          const plain = (entry) => JSON.stringify(Object.entries(entry).sort());
          const differs = async () => {
            const found = await store.entriesOf('reef');
            const all = [...model.entries.values()];
            const inDays = (from, before) => all.filter(({ kind, happenedAt }) => kind === 'feeding' && happenedAt >= from && (!before || happenedAt < before));
            const waiting = await store.waiting();
            const cursor = (await store.copy.cursor('reef')) ?? null;
            if (failures.length) return failures[0];
            for (const [what, read, wanted] of [
              ['entries', found, all],
              ['all but feedings', await look.changes('reef'), all.filter(({ kind }) => kind !== 'feeding')],
              ['feedings from a day on', await look.feedings('reef', '2026-06-14'), inDays('2026-06-14')],
              ['feedings of some days', await look.feedings('reef', '2026-06-12', '2026-06-15'), inDays('2026-06-12', '2026-06-15')],
            ]) {
              if (sorted(read.map(plain)) !== sorted(wanted.map(plain))) return `${what}: ${read.length} found, ${wanted.length} wanted`;
            }
            if (sorted(waiting.map(({ id }) => id)) !== sorted(model.waiting)) return `${waiting.length} wait, not ${model.waiting.length}`;
            if (sorted((await store.refusals()).map(({ id }) => id)) !== sorted(model.refused)) return 'refused ones differ';
            return JSON.stringify(cursor) === JSON.stringify(model.cursor) ? null : `cursor ${JSON.stringify(cursor)}`;
          };
          return { store, model, deeds, step, differs };
        };
      }
      """;
}

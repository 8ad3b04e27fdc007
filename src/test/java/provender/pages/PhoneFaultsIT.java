package provender.pages;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import provender.HowLong;

/** What can happen to a phone's storage: it fills up, its handles are closed, another tab changes it. */
class PhoneFaultsIT {
  private static final int UPGRADES = 50;
  private static Glass glass;
  private static Page page;

  @BeforeAll
  static void open() {
    glass = new Glass();
    page = glass.stranger("light", 390, 844);
    page.evaluate(PhoneModel.SCRIPT);
  }

  @AfterAll
  static void close() {
    glass.close();
  }

  @Test
  void random_operations_leave_the_store_as_a_plain_model_of_it_says() {
    long seed = Long.getLong("faults.seed", System.nanoTime() % 1_000_000);
    int runs = HowLong.times(20, 1000);
    Object differing = page.evaluate(
        """
        async ([seed, runs]) => {
          for (let run = seed; run < seed + runs; run++) {
            const phone = await phoneModel(`model ${run}`);
            const chance = random(run);
            for (let i = 0; i < 40; i++) await phone.step(chance());
            const differs = await phone.differs();
            await phone.store.close();
            indexedDB.deleteDatabase(`model ${run}`);
            if (differs) return `seed ${run}: ${differs}`;
          }
          return null;
        }
        """, List.of((double) seed, runs));
    assertThat(differing).as("seed " + seed).isNull();
  }

  @Test
  void storage_that_is_full_at_any_of_fifty_writes_loses_nothing_that_was_called_saved_and_keeps_no_half() {
    Object differing = page.evaluate(
        """
        async () => {
          const real = { put: IDBObjectStore.prototype.put, add: IDBObjectStore.prototype.add };
          const full = () => new DOMException('full', 'QuotaExceededError');
          for (const way of ['at the write', 'at the end']) for (let nth = 1; nth <= 50; nth++) {
            let writes = 0, hits = 0, told = 0;
            const spoilt = (name) => function (...values) {
              if (++writes !== nth) return real[name].apply(this, values);
              hits++;
              if (way === 'at the write') throw full();
              const request = real[name].apply(this, values);
              request.addEventListener('success', () => this.transaction.abort());
              return request;
            };
            const phone = await phoneModel(`full ${way} ${nth}`);
            const { tap, pull, answer, refuse, again } = phone.deeds;
            Object.assign(IDBObjectStore.prototype, { put: spoilt('put'), add: spoilt('add') });
            for (const deed of [tap, tap, pull, tap, answer, tap, tap, refuse, again, pull, tap, tap, tap, tap, answer, tap]) {
              await deed().catch(() => told++);
            }
            Object.assign(IDBObjectStore.prototype, real);
            const differs = (await phone.differs()) ?? (hits === 1 ? null : `${hits} hits`)
              ?? (way === 'at the write' && told !== 1 ? `${told} told` : null);
            await phone.store.close();
            indexedDB.deleteDatabase(`full ${way} ${nth}`);
            if (differs) return `${way}, write ${nth}: ${differs}`;
          }
          return null;
        }
        """);
    assertThat(differing).isNull();
  }

  @Test
  void handles_that_the_system_closes_are_opened_again_and_no_tap_notices() {
    Object differing = page.evaluate(
        """
        async (runs) => {
          const open = IDBFactory.prototype.open;
          const handles = [];
          IDBFactory.prototype.open = function (...values) {
            const request = open.apply(this, values);
            request.addEventListener('success', () => handles.push(request.result));
            return request;
          };
          try {
            for (let run = 1; run <= runs; run++) {
              const phone = await phoneModel(`closed ${run}`);
              const chance = random(run);
              for (let i = 0; i < 40; i++) {
                if (chance() < 0.5) for (const handle of handles.splice(0)) handle.close();
                await phone.step(chance());
              }
              const differs = await phone.differs();
              await phone.store.close();
              indexedDB.deleteDatabase(`closed ${run}`);
              if (differs) return `seed ${run}: ${differs}`;
            }
            return null;
          } finally {
            IDBFactory.prototype.open = open;
          }
        }
        """, HowLong.times(10, 200));
    assertThat(differing).isNull();
  }

  @Test
  void two_tabs_go_on_through_an_upgrade_from_an_older_page_and_one_to_a_newer_fifty_times() {
    Page other = page.context().newPage();
    other.navigate(glass.url());
    other.evaluate(PhoneModel.SCRIPT);
    for (int round = 1; round <= UPGRADES; round++) {
      String name = "tabs " + round;
      page.evaluate(OLDER_PAGE, name);
      other.evaluate(TAPS_BEGIN, name);
      page.evaluate(TAPS_BEGIN, name);
      page.evaluate(NEWER_PAGE, name);
      Object ended = List.of(String.valueOf(page.evaluate("() => window.tapping")), String.valueOf(other.evaluate("() => window.tapping")));
      assertThat(ended).as("round " + round).isEqualTo(List.of("10", "10"));
      assertThat(page.evaluate(ALL_THERE, name)).as("round " + round).isEqualTo("23 entries, 23 waiting, numbers to 23");
    }
    other.close();
  }

  /** The schema before there were places to look up, and a handle that gives way as its page did. */
  private static final String OLDER_PAGE =
      """
      (name) => new Promise((done, failed) => {
        const asked = indexedDB.open(name, 1);
        asked.onupgradeneeded = () => {
          const database = asked.result;
          database.createObjectStore('entries', { keyPath: 'id' }).createIndex('byTank', ['tank', 'happenedAt']);
          database.createObjectStore('outbox', { keyPath: ['tank', 'deviceSeq'] });
          database.createObjectStore('cursors', { keyPath: 'tank' });
          database.createObjectStore('refused', { keyPath: 'id' });
          const settings = database.createObjectStore('settings');
          settings.put('d', 'device');
          settings.put(3, 'deviceSeq reef');
          for (const deviceSeq of [1, 2, 3]) {
            const id = `old-${deviceSeq}`;
            asked.transaction.objectStore('entries').put({ id, tank: 'reef', device: 'd', deviceSeq, happenedAt: '2026-06-15T08:10:00+02:00' });
            asked.transaction.objectStore('outbox').put({ tank: 'reef', deviceSeq, id, recordedAt: '2026-06-15T06:10:00Z' });
          }
        };
        asked.onsuccess = () => {
          asked.result.onversionchange = () => asked.result.close();
          done();
        };
        asked.onerror = () => failed(asked.error);
      })
      """;

  private static final String TAPS_BEGIN =
      """
      (name) => {
        window.tapping = (async () => {
          const { store } = await phoneModel(name);
          for (let i = 1; i <= 10; i++) {
            await store.record({ id: crypto.randomUUID(), tank: 'reef', device: 'd', kind: 'feeding', happenedAt: '2026-06-15T08:10:00+02:00',
              recordedAt: '2026-06-15T06:10:00Z', body: {} });
          }
          return 10;
        })().catch(String);
      }
      """;

  private static final String NEWER_PAGE =
      """
      (name) => new Promise((done, failed) => {
        const asked = indexedDB.open(name, 99);
        asked.onupgradeneeded = ({ oldVersion }) => {
          const entries = asked.transaction.objectStore('entries');
          if (oldVersion < 2) entries.createIndex('bySeq', ['tank', 'seq']);
          if (oldVersion < 3) {
            entries.createIndex('byFish', ['tank', 'body.fish']);
            entries.createIndex('byRecord', ['tank', 'body.record', 'body.key']);
            entries.createIndex('byFeeding', ['tank', 'body.feeding']);
            entries.createIndex('byEntry', ['tank', 'body.entry']);
            const photos = asked.result.createObjectStore('photos', { keyPath: 'id' });
            photos.createIndex('waiting', 'waits');
            photos.createIndex('seen', 'seenAt');
            photos.createIndex('ofTank', 'tank');
          }
          if (oldVersion < 4) entries.createIndex('byKind', ['tank', 'kind', 'happenedAt']);
          entries.createIndex('byHand', ['tank', 'by']);
        };
        asked.onsuccess = () => {
          asked.result.close();
          done();
        };
        asked.onerror = () => failed(asked.error);
      })
      """;

  private static final String ALL_THERE =
      """
      async (name) => {
        const { store } = await phoneModel(name);
        const entries = await store.entriesOf('reef');
        const waiting = await store.waiting();
        const numbers = entries.map(({ deviceSeq }) => deviceSeq).sort((a, b) => a - b);
        const gapless = numbers.every((number, i) => number === i + 1);
        await store.close();
        return `${entries.length} entries, ${waiting.length} waiting, ${gapless ? `numbers to ${numbers.at(-1)}` : numbers}`;
      }
      """;
}

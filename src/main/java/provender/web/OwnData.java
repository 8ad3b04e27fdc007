package provender.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.inject.Singleton;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import provender.passkey.Passkeys;
import provender.people.Keeper;
import provender.people.Mailboxes;
import provender.people.MemberStore.Change;
import provender.people.PersonStore;
import provender.people.PersonStore.Belonging;
import provender.people.Sessions;
import provender.sync.DamagedJournal;
import provender.sync.JournalStore;
import provender.sync.JournalStore.Page;
import provender.sync.JournalStore.Stored;
import provender.sync.Pull;
import provender.sync.TankKey;

/** Gathers what is kept about one person. Secrets stay out: hashes of passwords and sessions say nothing to them. */
@Singleton
class OwnData {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final PersonStore persons;
  private final Sessions sessions;
  private final Passkeys passkeys;
  private final Mailboxes mailboxes;
  private final JournalStore journals;

  OwnData(PersonStore persons, Sessions sessions, Passkeys passkeys, Mailboxes mailboxes, JournalStore journals) {
    this.persons = persons;
    this.sessions = sessions;
    this.passkeys = passkeys;
    this.mailboxes = mailboxes;
    this.journals = journals;
  }

  ObjectNode of(Keeper keeper, Instant now) {
    ObjectNode data = JSON.createObjectNode().put("writtenAt", now.toString());
    data.putObject("person").put("id", keeper.id()).put("name", keeper.name())
        .put("mailAddress", mailboxes.address(keeper));
    ArrayNode households = data.putArray("households");
    ArrayNode phones = data.putArray("phones");
    sessions.devices(keeper, "", now).forEach(one -> phones.addObject()
        .put("name", one.name()).put("openedAt", one.openedAt().toString()).put("lastUsedAt", text(one.lastUsedAt())));
    ArrayNode keys = data.putArray("passkeys");
    passkeys.of(keeper).forEach(one -> keys.addObject()
        .put("name", one.name()).put("place", one.place()).put("madeAt", one.madeAt().toString()).put("usedAt", text(one.usedAt())));
    ArrayNode changes = data.putArray("changes");
    persons.changes(keeper.id()).forEach(one -> add(changes, one.household(), one.change()));
    ArrayNode entries = data.putArray("entries");
    ArrayNode damaged = data.putArray("damagedTanks");
    for (Belonging one : persons.belongings(keeper.id())) {
      households.addObject().put("id", one.household()).put("name", one.name())
          .put("role", SessionCookies.lower(one.role().name())).put("endedAt", text(one.endedAt()));
      for (String tank : persons.tanks(one.household())) {
        try {
          addOwn(entries, new TankKey(one.household(), tank), keeper);
        } catch (DamagedJournal unreadable) {
          damaged.add(tank);
        }
      }
    }
    return data;
  }

  /** Only what they recorded themselves: the rest of a journal is not about them. */
  private void addOwn(ArrayNode entries, TankKey tank, Keeper keeper) {
    Pull pull = new Pull(journals);
    long after = 0;
    for (Page page = pull.after(tank, 0, Pull.MOST_ENTRIES); !page.entries().isEmpty(); page = pull.after(tank, after, Pull.MOST_ENTRIES)) {
      for (Stored stored : page.entries()) {
        JsonNode entry = Json.object(stored.written());
        if (entry.path("by").asText().equals(keeper.id())) {
          entries.add(((ObjectNode) entry).put("seq", stored.seq()).put("receivedAt", stored.receivedAt().toString()));
        }
        after = stored.seq();
      }
    }
  }

  private static void add(ArrayNode changes, String household, Change change) {
    changes.addObject()
        .put("household", household).put("at", change.at().toString()).put("by", change.by()).put("about", change.about())
        .put("what", SessionCookies.lower(change.what().name()))
        .put("role", change.role() == null ? null : SessionCookies.lower(change.role().name()));
  }

  private static @Nullable String text(@Nullable Instant at) {
    return at == null ? null : at.toString();
  }
}

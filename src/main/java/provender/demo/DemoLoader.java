package provender.demo;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.elytron.security.common.BcryptUtil;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import provender.demo.DemoScenario.DemoHousehold;
import provender.demo.DemoScenario.DemoKeeper;
import provender.demo.DemoScenario.DemoTank;
import provender.people.Keeper;
import provender.people.PeopleStore;
import provender.people.PeopleStore.Account;
import provender.people.Role;
import provender.sync.Answer;
import provender.sync.JournalStore;
import provender.sync.Push;
import provender.sync.TankKey;

/** Puts the demo into an empty store at start, and says how to get in. */
@ApplicationScoped
class DemoLoader {
  private static final Logger LOG = Logger.getLogger("provender.demo");

  private final PeopleStore people;
  private final Push push;
  private final boolean wanted;
  private final String host;
  private final int port;

  DemoLoader(
      PeopleStore people,
      JournalStore journals,
      @ConfigProperty(name = "provender.demo") boolean wanted,
      @ConfigProperty(name = "quarkus.http.host") String host,
      @ConfigProperty(name = "quarkus.http.port") int port) {
    this.people = people;
    this.push = new Push(journals);
    this.wanted = wanted;
    this.host = host;
    this.port = port;
  }

  void start(@Observes StartupEvent started) {
    if (!wanted) {
      return;
    }
    if (!isThisMachineOnly()) {
      throw new IllegalStateException(
          "provender.demo has passwords that anyone can read: it only runs with quarkus.http.host=127.0.0.1");
    }
    DemoScenario scenario = DemoScenario.read();
    if (people.isEmpty()) {
      Instant now = Instant.now();
      scenario.households().forEach(household -> load(scenario, household, now));
    }
    LOG.info(howToGetIn(scenario));
  }

  private void load(DemoScenario scenario, DemoHousehold household, Instant now) {
    people.addHousehold(household.id(), household.name());
    for (DemoKeeper keeper : household.keepers()) {
      Keeper who = new Keeper(keeper.id(), keeper.name());
      Role role = Role.valueOf(keeper.role().toUpperCase(Locale.ROOT));
      people.addKeeper(household.id(), new Account(who, BcryptUtil.bcryptHash(keeper.password())), role);
    }
    for (DemoTank tank : household.tanks()) {
      people.addTank(household.id(), tank.id(), tank.name(), tank.zone());
      List<JsonNode> entries = scenario.entries(tank, now);
      for (int from = 0; from < entries.size(); from += Push.MOST_ENTRIES) {
        send(household, tank, entries.subList(from, Math.min(entries.size(), from + Push.MOST_ENTRIES)), now);
      }
    }
  }

  private void send(DemoHousehold household, DemoTank tank, List<JsonNode> entries, Instant now) {
    TankKey key = new TankKey(household.id(), tank.id());
    for (Answer answer : push.take(key, entries, by -> people.hasBelonged(household.id(), by), now).answers()) {
      if (answer.outcome() == Answer.Outcome.REFUSED) {
        throw new IllegalStateException("demo entry refused: " + answer);
      }
    }
  }

  private boolean isThisMachineOnly() {
    try {
      return InetAddress.getByName(host).isLoopbackAddress();
    } catch (UnknownHostException unknown) {
      return false;
    }
  }

  private String howToGetIn(DemoScenario scenario) {
    StringBuilder text = new StringBuilder("\n\n  Provender with its invented demo: http://" + host + ":" + port + "/\n");
    for (DemoHousehold household : scenario.households()) {
      text.append("\n  ").append(household.name()).append('\n');
      for (DemoKeeper keeper : household.keepers()) {
        text.append("    name ").append(keeper.name()).append("   password ").append(keeper.password());
        text.append("   (").append(keeper.role()).append(")\n");
      }
    }
    return text.append("\n  Ctrl-C ends it.\n").toString();
  }
}

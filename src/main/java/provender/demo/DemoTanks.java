package provender.demo;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.HashSet;
import java.util.Set;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Which tanks of this server are invented. */
@ApplicationScoped
public class DemoTanks {
  private final Set<String> ids = new HashSet<>();

  DemoTanks(@ConfigProperty(name = "provender.demo") boolean wanted) {
    if (wanted) {
      DemoScenario.read().households().forEach(household -> household.tanks().forEach(tank -> ids.add(tank.id())));
    }
  }

  public boolean isInvented(String tank) {
    return ids.contains(tank);
  }
}

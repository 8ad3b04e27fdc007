package provender.store;

import jakarta.enterprise.context.ApplicationScoped;
import org.eclipse.microprofile.health.HealthCheck;
import org.eclipse.microprofile.health.HealthCheckResponse;
import org.eclipse.microprofile.health.Readiness;

/** Down while any journal is damaged. */
@Readiness
@ApplicationScoped
class SoundJournals implements HealthCheck {
  private final Verified verified;

  SoundJournals(Verified verified) {
    this.verified = verified;
  }

  @Override
  public HealthCheckResponse call() {
    int damaged = verified.faults().size();
    return HealthCheckResponse.named("journals add up").status(damaged == 0).withData("damaged", damaged).build();
  }
}

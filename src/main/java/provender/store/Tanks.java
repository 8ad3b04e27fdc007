package provender.store;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;

/** The rows of tanks. */
@ApplicationScoped
class Tanks implements PanacheRepositoryBase<TankRow, TankRow.Key> {}

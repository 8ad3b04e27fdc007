package provender.store;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import provender.photo.PhotoStore;
import provender.sync.TankKey;

/** Photos in SQL, so that one copy of the database has them too. */
@ApplicationScoped
@Transactional
class SqlPhotoStore implements PhotoStore, PanacheRepositoryBase<PhotoRow, PhotoRow.Key> {
  private static final String IN_TANK = "key.household = ?1 and key.tank = ?2";

  @Override
  public byte @Nullable [] find(TankKey tank, String id) {
    PhotoRow row = findById(key(tank, id));
    return row == null ? null : row.jpeg;
  }

  @Override
  public boolean has(TankKey tank, String id) {
    return count(IN_TANK + " and key.id = ?3", tank.household(), tank.tank(), id) > 0;
  }

  @Override
  public List<String> ids(TankKey tank) {
    return getEntityManager()
        .createQuery("select p.key.id from PhotoRow p where " + IN_TANK + " order by p.key.id", String.class)
        .setParameter(1, tank.household())
        .setParameter(2, tank.tank())
        .getResultList();
  }

  @Override
  public long count(TankKey tank) {
    return count(IN_TANK, tank.household(), tank.tank());
  }

  @Override
  public void keep(TankKey tank, String id, byte[] jpeg, Instant receivedAt) {
    PhotoRow row = new PhotoRow();
    row.key = key(tank, id);
    row.receivedAt = receivedAt;
    row.jpeg = jpeg;
    persist(row);
  }

  private static PhotoRow.Key key(TankKey tank, String id) {
    return new PhotoRow.Key(tank.household(), tank.tank(), id);
  }
}

package provender.store;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import provender.photo.PhotoStore;
import provender.sync.TankKey;

/** Photos in SQL, so that one copy of the database has them too; whatever is asked of them, the fence is entered first. */
@ApplicationScoped
@Transactional
class SqlPhotoStore implements PhotoStore, PanacheRepositoryBase<PhotoRow, PhotoRow.Key> {
  private static final String IN_TANK = "key.household = ?1 and key.tank = ?2";
  private static final String KEPT = IN_TANK + " and erasedAt is null";

  private final RowFence fence;

  SqlPhotoStore(RowFence fence) {
    this.fence = fence;
  }

  @Override
  public byte @Nullable [] find(TankKey tank, String id) {
    fence.enter(tank.household());
    PhotoRow row = findById(key(tank, id));
    return row == null ? null : row.jpeg;
  }

  @Override
  public boolean has(TankKey tank, String id) {
    fence.enter(tank.household());
    return count(KEPT + " and key.id = ?3", tank.household(), tank.tank(), id) > 0;
  }

  @Override
  public boolean isErased(TankKey tank, String id) {
    fence.enter(tank.household());
    return count(IN_TANK + " and key.id = ?3 and erasedAt is not null", tank.household(), tank.tank(), id) > 0;
  }

  @Override
  public List<String> ids(TankKey tank) {
    fence.enter(tank.household());
    return getEntityManager()
        .createQuery("select p.key.id from PhotoRow p where " + KEPT + " order by p.key.id", String.class)
        .setParameter(1, tank.household())
        .setParameter(2, tank.tank())
        .getResultList();
  }

  @Override
  public long count(TankKey tank) {
    fence.enter(tank.household());
    return count(KEPT, tank.household(), tank.tank());
  }

  @Override
  public void keep(TankKey tank, String id, byte[] jpeg, Instant receivedAt) {
    fence.enter(tank.household());
    PhotoRow row = new PhotoRow();
    row.key = key(tank, id);
    row.receivedAt = receivedAt;
    row.jpeg = jpeg;
    persistAndFlush(row);
  }

  @Override
  public void erase(TankKey tank, String id, Instant at) {
    fence.enter(tank.household());
    PhotoRow known = findById(key(tank, id));
    PhotoRow row = known == null ? new PhotoRow() : known;
    if (known == null) {
      row.key = key(tank, id);
      row.receivedAt = at;
    }
    row.jpeg = null;
    row.erasedAt = at;
    persistAndFlush(row);
  }

  private static PhotoRow.Key key(TankKey tank, String id) {
    return new PhotoRow.Key(tank.household(), tank.tank(), id);
  }
}

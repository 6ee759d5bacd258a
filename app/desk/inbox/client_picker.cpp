#include "desk/inbox/client_picker.h"

#include <QVBoxLayout>

#include "desk/client/client_form.h"
#include "desk/client/client_list.h"
#include "desk/look/look.h"
#include "domain/clock.h"
#include "work/keep_records.h"

namespace kempt::desk {

ClientPicker::ClientPicker(Session& session, QWidget* parent) : QDialog(parent) {
    setWindowTitle(tr("Whose photos are these?"));
    setAttribute(Qt::WA_DeleteOnClose);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    list_ = new ClientList(session);
    column->addWidget(list_);
    resize(measures().px(340), measures().px(420));
    const auto choose = [this](Id client) {
        emit chosen(client);
        accept();
    };
    connect(list_, &ClientList::chosen, this, choose);
    connect(list_, &ClientList::add_asked, this, [this, &session, choose] {
        auto* form = new ClientForm({}, Clock().today(), this);
        connect(form, &ClientForm::ready, this, [this, &session, choose](const Client& client) {
            session.ask(
                session.records(), tr("Adding a client"), this,
                [client](Book& book, const Progress&) { return work::add_client(book, client); },
                [&session, choose](const Client& kept) {
                    session.changed(kept.id, 0);
                    choose(kept.id);
                });
        });
        form->open();
    });
    list_->focus_search();
}

}  // namespace kempt::desk

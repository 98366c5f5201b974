using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Sightglass.Storage.Migrations
{
    /// <inheritdoc />
    public partial class ProposalNumbers : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "Edited",
                table: "Proposals",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "Number",
                table: "Proposals",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0);

            // Those that are there keep the number that they were shown with: their place in their book's list.
            migrationBuilder.Sql(
                """
                UPDATE Proposals SET Number =
                    (SELECT COUNT(*) FROM Proposals AS other WHERE other.Book = Proposals.Book AND (other.At < Proposals.At OR (other.At = Proposals.At AND other.Id <= Proposals.Id)));
                """);

            migrationBuilder.CreateIndex(
                name: "IX_Proposals_Book_Number",
                table: "Proposals",
                columns: new[] { "Book", "Number" },
                unique: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropIndex(
                name: "IX_Proposals_Book_Number",
                table: "Proposals");

            migrationBuilder.DropColumn(
                name: "Edited",
                table: "Proposals");

            migrationBuilder.DropColumn(
                name: "Number",
                table: "Proposals");
        }
    }
}
